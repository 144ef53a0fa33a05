// SPDX-License-Identifier: MIT
#include "app/stockmodel.h"

#include "app/figures.h"
#include "app/money.h"
#include "app/prints.h"
#include "app/reply.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "length/read.h"

#include <algorithm>

namespace matside {

namespace {

const QString clothName = QStringLiteral("cloth");
const QString lengthName = QStringLiteral("length");
const QString widthName = QStringLiteral("width");
const QString lengthSide = QStringLiteral("lengthMm");
const QString widthSide = QStringLiteral("widthMm");
const QString printName = QStringLiteral("print");
const QString colourName = QStringLiteral("colour");

Length stepOf(System system)
{
    return system == System::Inch ? Length::inches(1) : Length::mm(10);
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
    m_cloth = project.cloths.empty() ? std::string() : project.cloths.front().id;
    m_length = project.system == System::Inch ? Length::inches(18) : Length::mm(500);
    const Length usable = m_workspace.plan().strip.usable;
    m_width =
        usable > Length() ? usable : (project.system == System::Inch ? Length::inches(40) : Length::mm(1000));
    emit changed();
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
    if (project.cloths.empty())
        return {};
    QVariantList choices;
    for (const Cloth &cloth : project.cloths)
        choices << QVariantMap{{QStringLiteral("value"), toQt(cloth.id)},
                               {QStringLiteral("says"), clothAmongAll(project, cloth.id)},
                               {printName, printOf(project, cloth.id)},
                               {colourName, toQt(cloth.colour)}};
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
                        {QStringLiteral("value"), toQt(m_cloth)},
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

QVariantMap StockModel::remnant() const
{
    const Project &project = m_workspace.project();
    const Cloth *cloth = clothNamed(project, m_cloth);
    if (!cloth)
        return {};
    const Marks marks = project.marks();
    const double broad = std::max(m_width.asMm(), m_workspace.plan().strip.usable.asMm());
    constexpr double least = 1.2; // as long as broad and a little
    return {{printName, printOf(project, m_cloth)},
            {colourName, toQt(cloth->colour)},
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
    const Cloth *cloth = clothNamed(project, m_cloth);
    if (project.cloths.empty())
        return tr("List the cloth at Fit first.");
    if (!cloth)
        return tr("Say which cloth it is.");
    if (cloth->owned.size() >= mostOwned)
        return tr("%1 pieces of one cloth are laid out together at most. Take a small one away first.")
            .arg(mostOwned);
    if (project.made.layoutOf(m_cloth))
        return tr("This cloth is bought or begun, so its layout stays. Take the tick away first.");
    return {};
}

void StockModel::nudge(const QString &key, int steps)
{
    const System system = m_workspace.project().system;
    if (Length *length = lengthOf(key)) {
        *length = std::clamp(*length + stepOf(system) * steps, leastOf(system), mostOf(system));
        emit changed();
    }
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
    for (Cloth &cloth : next.cloths)
        if (cloth.id == m_cloth)
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
