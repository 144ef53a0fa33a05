// SPDX-License-Identifier: MIT
#include "sheet/diagrams.h"

#include "app/wording.h"
#include "sheet/pages.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>
#include <QSvgGenerator>

#include <array>
#include <cmath>

namespace matside {

namespace {

struct Diagram {
    const char *name;
    void (*draw)(Paper &paper, const Job &job);
};

constexpr std::array diagrams{
    Diagram{"piece", pieceAlone},
    Diagram{"strip", flatStrip},
    Diagram{"strip-drawn-in", drawnInStrip},
    Diagram{"trim", trimAlone},
    Diagram{"map-front", frontMap},
    Diagram{"map-back", backMap},
    Diagram{"match-marks", matchMarks},
    Diagram{"binding", bindingLaid},
    Diagram{"layouts", clothLayouts},
    Diagram{"gauge", gauge},
};

/// Higher than any drawing.
constexpr double roomy = 1000;

/// Draws on a page this high; gives how far down it went.
double draw(QIODevice &to, const Diagram &diagram, const Job &job, double height)
{
    const double units = Paper::unitsPerMm();
    const double across = QPageSize(QPageSize::A4).size(QPageSize::Millimeter).width();
    const QSize size(static_cast<int>(std::lround(across * units)),
                     static_cast<int>(std::lround(height * units)));
    QSvgGenerator svg;
    svg.setOutputDevice(&to);
    svg.setTitle(toQt(job.project.name));
    svg.setDescription(QString::fromLatin1(diagram.name));
    svg.setResolution(static_cast<int>(std::lround(units * 25.4)));
    svg.setSize(size);
    svg.setViewBox(QRect(QPoint(), size));
    Paper paper(svg, height, units);
    diagram.draw(paper, job);
    return paper.y;
}

/// A drawing and all that a sheet is made of.
struct Drawing {
    Drawing(const Project &project, const Plan &plan)
        : order(steps(project, plan)),
          shop(shoppingList(project, plan, order)), job{project, plan, order, shop}
    {
    }
    Drawing(const Drawing &) = delete;
    Drawing &operator=(const Drawing &) = delete;

    /// How high it is with its margins; nothing when there is nothing to draw.
    [[nodiscard]] std::optional<double> heightOf(const Diagram &diagram) const
    {
        QByteArray trial;
        QBuffer buffer(&trial);
        if (!buffer.open(QIODevice::WriteOnly))
            return std::nullopt;
        const double end = draw(buffer, diagram, job, roomy);
        return end > Paper::margin ? std::optional(end + Paper::margin) : std::nullopt;
    }

    std::vector<Step> order;
    std::vector<Buy> shop;
    Job job;
};

} // namespace

QStringList diagramsFor(const Project &project, const Plan &plan)
{
    const Drawing drawing(project, plan);
    QStringList names;
    for (const Diagram &diagram : diagrams)
        if (drawing.heightOf(diagram))
            names += QString::fromLatin1(diagram.name);
    return names;
}

bool writeDiagram(QIODevice &to, const QString &name, const Project &project, const Plan &plan)
{
    const Drawing drawing(project, plan);
    for (const Diagram &diagram : diagrams) {
        if (name != QLatin1String(diagram.name))
            continue;
        const auto height = drawing.heightOf(diagram);
        if (!height)
            return false;
        QByteArray bytes;
        QBuffer buffer(&bytes);
        if (!buffer.open(QIODevice::WriteOnly))
            return false;
        (void)draw(buffer, diagram, drawing.job, *height);
        return to.write(bytes) == bytes.size();
    }
    return false;
}

QString saveDiagrams(const Project &project, const Plan &plan, const QString &folder)
{
    const auto wrong = [](const QString &path, const QString &why) {
        return QCoreApplication::translate(
                   "Sheet", "The diagram could not be written to %1: %2. Choose another place.")
            .arg(path, why);
    };
    if (!QDir().mkpath(folder))
        return wrong(folder, QCoreApplication::translate("Sheet", "the folder cannot be made"));
    for (const QString &name : diagramsFor(project, plan)) {
        QSaveFile file(QDir(folder).filePath(name + QStringLiteral(".svg")));
        const bool written =
            file.open(QIODevice::WriteOnly) && writeDiagram(file, name, project, plan) && file.commit();
        if (!written)
            return wrong(file.fileName(), file.errorString());
    }
    return {};
}

} // namespace matside
