// SPDX-License-Identifier: MIT
#include "app/stockmodel.h"

#include "app/fielditems.h"
#include "app/figures.h"
#include "app/money.h"
#include "app/prints.h"
#include "app/reply.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "length/read.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

const QString clothName = QStringLiteral("cloth");
const QString lengthName = QStringLiteral("length");
const QString widthName = QStringLiteral("width");
const QString lengthSide = QStringLiteral("lengthMm");
const QString widthSide = QStringLiteral("widthMm");
const QString printName = QStringLiteral("print");
const QString colourName = QStringLiteral("colour");

QString colourOf(const Project &project, const std::string &id)
{
    const Cloth *cloth = clothNamed(project, id);
    return cloth ? toQt(cloth->colour) : QString();
}

Length stepOf(System system)
{
    return system == System::Inch ? Length::inches(1) : Length::mm(10);
}

/// Length × width; the unit stands once, behind the second.
QString sides(const OwnedPiece &owned, Marks marks)
{
    const FigureView length = figureOf(owned.length, marks);
    QString first = length.text;
    if (!length.unit.isEmpty() && first.endsWith(length.unit))
        first.chop(length.unit.size());
    //: a piece of cloth: length × width
    return StockModel::tr("{%1} × %2").arg(first.trimmed(), braced(owned.width, marks));
}

/// 1 in | 10 mm to 50 yd | 50 m: a remnant or a whole bolt.
Length leastOf(System system)
{
    return stepOf(system);
}
Length mostOf(System system)
{
    return system == System::Inch ? Length::inches(1800) : Length::mm(50'000);
}

} // namespace

StockModel::StockModel(Workspace &workspace, Session &session) : m_workspace(workspace), m_session(session)
{
    connect(&m_workspace, &Workspace::opened, this, &StockModel::begin);
    connect(&m_workspace, &Workspace::changed, this, &StockModel::changed);
    begin();
}

void StockModel::begin()
{
    const Project &project = m_workspace.project();
    m_cloth.clear();
    m_length = project.system == System::Inch ? Length::inches(18) : Length::mm(500);
    const Length usable = m_workspace.plan().strip.usable;
    m_width =
        usable > Length() ? usable : (project.system == System::Inch ? Length::inches(40) : Length::mm(1000));
    emit changed();
}

std::vector<std::string> StockModel::cloths() const
{
    std::vector<std::string> all;
    for (const Cloth &cloth : m_workspace.project().cloths)
        all.push_back(cloth.id);
    for (const Step &step : m_workspace.steps())
        if (step.station == Station::Cut && std::find(all.begin(), all.end(), step.cloth) == all.end() &&
            unlisted(m_workspace.project(), step.cloth))
            all.push_back(step.cloth);
    return all;
}

std::string StockModel::chosen() const
{
    const std::vector<std::string> all = cloths();
    if (all.empty() || std::find(all.begin(), all.end(), m_cloth) != all.end())
        return all.empty() ? std::string() : m_cloth;
    return all.front();
}

Length *StockModel::lengthOf(const QString &key)
{
    return key == lengthName ? &m_length : key == widthName ? &m_width : nullptr;
}

QString StockModel::headSays() const
{
    std::int64_t pieces = 0;
    for (const Cloth &cloth : m_workspace.project().cloths)
        pieces += static_cast<std::int64_t>(cloth.owned.size());
    //: pieces of cloth she has already
    return pieces > 0 ? counted(pieces, tr("1 piece"), tr("%1 pieces")) : QString();
}

QVariantList StockModel::amounts() const
{
    const Project &project = m_workspace.project();
    const std::vector<std::string> all = cloths();
    if (all.empty())
        return {};
    QVariantList choices;
    for (const std::string &cloth : all)
        choices << QVariantMap{{QStringLiteral("value"), toQt(cloth)},
                               {QStringLiteral("says"), clothAmongAll(project, cloth)},
                               {printName, printOf(project, cloth)},
                               {colourName, colourOf(project, cloth)}};
    const auto amount = [&](const QString &key, const QString &says, Length length) {
        return QVariantMap{
            {QStringLiteral("key"), key},
            {QStringLiteral("says"), says},
            {QStringLiteral("kind"), QStringLiteral("length")},
            {QStringLiteral("figure"), QVariant::fromValue(figureOf(length, project.marks()))}};
    };
    return {QVariantMap{{QStringLiteral("key"), clothName},
                        {QStringLiteral("says"), tr("a piece of")},
                        {QStringLiteral("kind"), QStringLiteral("choice")},
                        {QStringLiteral("value"), toQt(chosen())},
                        {QStringLiteral("choices"), choices}},
            amount(lengthName, tr("its length, along the selvage"), m_length),
            amount(widthName, tr("its width, selvages off"), m_width)};
}

QStringList StockModel::pieces() const
{
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    QStringList lines;
    for (const Cloth &cloth : project.cloths)
        for (const OwnedPiece &owned : cloth.owned)
            //: a piece of cloth: length × width, and which cloth
            lines << tr("%1 × %2 of %3")
                         .arg(braced(owned.length, marks), braced(owned.width, marks),
                              clothAmongAll(project, cloth.id));
    return lines;
}

QVariantList StockModel::figures() const
{
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    QVariantList all;
    for (const Cloth &cloth : project.cloths)
        for (const OwnedPiece &owned : cloth.owned)
            all << sides(owned, marks);
    return all;
}

QVariantMap StockModel::remnant() const
{
    const Project &project = m_workspace.project();
    const std::string chosen = this->chosen();
    if (chosen.empty())
        return {};
    const Marks marks = project.marks();
    const double broad = std::max(m_width.asMm(), m_workspace.plan().strip.usable.asMm());
    constexpr double least = 0.9; // nearly as long as broad
    return {{printName, printOf(project, chosen)},
            {colourName, colourOf(project, chosen)},
            {lengthSide, m_length.asMm()},
            {widthSide, m_width.asMm()},
            {QStringLiteral("lengthSays"), braced(m_length, marks)},
            {QStringLiteral("widthSays"), braced(m_width, marks)},
            {QStringLiteral("roomLengthMm"), std::max(m_length.asMm(), broad * least)},
            {QStringLiteral("roomWidthMm"), broad}};
}

QVariantList StockModel::drawn() const
{
    const Project &project = m_workspace.project();
    QVariantList all;
    for (const Cloth &cloth : project.cloths)
        for (const OwnedPiece &owned : cloth.owned)
            all << QVariantMap{{printName, printOf(project, cloth.id)},
                               {colourName, toQt(cloth.colour)},
                               {lengthSide, owned.length.asMm()},
                               {widthSide, owned.width.asMm()}};
    return all;
}

double StockModel::mostDrawn(const QString &side) const
{
    double most = 0;
    for (const QVariant &piece : drawn())
        most = std::max(most, piece.toMap().value(side).toDouble());
    return most;
}

double StockModel::mostLengthMm() const
{
    return mostDrawn(lengthSide);
}

double StockModel::mostWidthMm() const
{
    return mostDrawn(widthSide);
}

QString StockModel::whyNot() const
{
    const Project &project = m_workspace.project();
    const std::string chosen = this->chosen();
    const Cloth *cloth = clothNamed(project, chosen);
    if (chosen.empty())
        return tr("Say which cloth it is.");
    if (!cloth && project.cloths.size() >= mostCloths)
        return inWords(QT_TRANSLATE_NOOP("Words", "More than %1 cloths do not fit in one piece."))
            .arg(mostCloths);
    if (cloth && cloth->owned.size() >= mostOwned)
        return tr("%1 pieces of one cloth are laid out together at most. Take a small one away first.")
            .arg(mostOwned);
    if (project.made.layoutOf(chosen))
        return tr("This cloth is bought or begun, so its layout stays. Take the tick away first.");
    return {};
}

QString StockModel::addText() const
{
    const Project &project = m_workspace.project();
    const std::string chosen = this->chosen();
    if (chosen.empty() || clothNamed(project, chosen))
        //: adds the piece of cloth just entered
        return tr("Add this piece");
    //: %1 is a use, "back cloth": Fit has no cloth listed for it yet
    return tr("List %1 at Fit, add this piece").arg(clothText(project, chosen));
}

void StockModel::nudge(const QString &key, int steps)
{
    const System system = m_workspace.project().system;
    if (Length *length = lengthOf(key)) {
        *length = std::clamp(*length + stepOf(system) * steps, leastOf(system), mostOf(system));
        emit changed();
    }
}

void StockModel::dragTo(double lengthMm, double widthMm)
{
    const System system = m_workspace.project().system;
    const auto snapped = [&](double mm) {
        const Length asked = Length::mmTenths(std::lround(10 * std::clamp(mm, 0.0, mostOf(system).asMm())));
        return std::clamp(asked.nearestTo(stepOf(system)), leastOf(system), mostOf(system));
    };
    const Length length = snapped(lengthMm), width = snapped(widthMm);
    if (length == m_length && width == m_width)
        return;
    m_length = length;
    m_width = width;
    emit changed();
}

QVariantMap StockModel::enter(const QString &key, const QString &text)
{
    const System system = m_workspace.project().system;
    const Marks marks = m_workspace.project().marks();
    Length *length = lengthOf(key);
    if (!length)
        return answer(false, tr("This cannot be changed here."));
    const auto read = readLength(text.toStdString(), system);
    if (!read)
        return answer(false, sentence(read.error(), system));
    if (read.value() < leastOf(system) || read.value() > mostOf(system))
        return answer(false, tr("Between %1 and %2.")
                                 .arg(figureText(leastOf(system), marks), figureText(mostOf(system), marks)));
    *length = read.value();
    emit changed();
    return answer(true, QString());
}

void StockModel::pick(const QString &cloth)
{
    m_cloth = cloth.toStdString();
    emit changed();
}

void StockModel::add()
{
    if (!whyNot().isEmpty() || m_session.readOnly())
        return;
    Project next = m_workspace.project();
    const std::string chosen = this->chosen();
    if (const auto fresh = unlisted(next, chosen))
        next.cloths.push_back(*fresh);
    for (Cloth &cloth : next.cloths)
        if (cloth.id == chosen)
            cloth.owned.push_back({m_length, m_width, {}});
    (void)m_workspace.commit("owned", next);
}

void StockModel::takeAway(int row)
{
    if (m_session.readOnly())
        return;
    Project next = m_workspace.project();
    for (Cloth &cloth : next.cloths) {
        const int here = static_cast<int>(cloth.owned.size());
        if (row >= 0 && row < here) {
            if (next.made.layoutOf(cloth.id))
                return m_session.tell(tr("Strips of this piece are in a layout that stays."));
            cloth.owned.erase(cloth.owned.begin() + row);
            break;
        }
        row -= here;
    }
    (void)m_workspace.commit("owned", next);
}

} // namespace matside
