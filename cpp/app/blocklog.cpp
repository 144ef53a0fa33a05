// SPDX-License-Identifier: MIT
#include "app/blocklog.h"

#include "app/figures.h"
#include "app/findings.h"
#include "app/wording.h"
#include "bench/record.h"
#include "length/read.h"

#include <QCoreApplication>
#include <QUuid>

#include <algorithm>

namespace matside {

namespace {

/// What is worth remembering of a stitched block; common practice, no published source.
constexpr std::array flagsKnown{
    //: a fold of the back cloth stitched down by mistake
    Worded{"pleat", QT_TRANSLATE_NOOP("Words", "Pleat on the back")},
    Worded{"thread", QT_TRANSLATE_NOOP("Words", "Thread broke or loops")},
    //: patch: a shape of cloth stitched onto the block
    Worded{"patch", QT_TRANSLATE_NOOP("Words", "Patch not covered")},
    Worded{"mark", QT_TRANSLATE_NOOP("Words", "Stain or hoop mark")},
    Worded{"look", QT_TRANSLATE_NOOP("Words", "Look at it again")},
};

} // namespace

QString flagSays(const QString &code)
{
    return wordsOrCode(flagsKnown, code.toStdString());
}

BlockLog::BlockLog(Workspace &workspace, PhotoKeeper &keeper, PhotoSource &camera, PicturePicker &picker)
    : m_workspace(workspace), m_keeper(keeper), m_camera(camera), m_picker(picker)
{
    connect(&m_workspace, &Workspace::opened, this, [this] { setBlock({}); });
    connect(&m_workspace, &Workspace::failed, this, [this](const QString &says) {
        if (!m_block.isEmpty())
            m_problem = says;
        emit changed();
    });
    for (PhotoSource *source : {&m_camera, static_cast<PhotoSource *>(&m_picker)})
        connect(source, &PhotoSource::captured, this, &BlockLog::receive);
    connect(&m_keeper, &PhotoKeeper::kept, this, &BlockLog::take);
    connect(&m_keeper, &PhotoKeeper::refused, this, &BlockLog::refuse);
    connect(&m_keeper, &PhotoKeeper::thumbMade, this, &BlockLog::changed);
}

void BlockLog::setBlock(const QString &block)
{
    m_block = block;
    load();
    emit changed();
}

void BlockLog::setStrip(int strip)
{
    m_strip = strip;
    emit changed();
}

void BlockLog::load()
{
    m_flags.clear();
    m_words.clear();
    m_faces = {};
    m_face = 0;
    m_saveWhenKept = false;
    m_problem.clear();
    m_keeping = false;
    if (m_block.isEmpty())
        return;
    const Plan &plan = m_workspace.plan();
    m_along = plan.block.outline.along;
    m_across = plan.block.outline.across;
    if (const auto at = record()) {
        const MadeBlock &made = m_workspace.project().made.blocks[*at];
        if (made.good() && made.outline) {
            m_along = (*made.outline)[0];
            m_across = (*made.outline)[1];
        }
    }
    // Taken before and not yet saved: a call came in between.
    if (const auto drafts = m_keeper.book().drafts(m_workspace.id(), m_block))
        m_faces = drafts.value();
    m_face = m_faces[0] && !m_faces[1] ? 1 : 0;
}

std::optional<std::size_t> BlockLog::record() const
{
    const std::vector<MadeBlock> &blocks = m_workspace.project().made.blocks;
    const std::string name = m_block.toStdString();
    for (std::size_t i = blocks.size(); i-- > 0;)
        if (blocks[i].block == name && blocks[i].good())
            return i;
    if (stitching() != nullptr)
        return std::nullopt;
    for (std::size_t i = blocks.size(); i-- > 0;)
        if (blocks[i].block == name)
            return i;
    return std::nullopt;
}

const Step *BlockLog::stitching() const
{
    const std::string name = m_block.toStdString();
    for (const Step &step : m_workspace.steps())
        if (step.does == Does::StitchBlock && !step.trial && step.done < step.count &&
            blockInHand(m_workspace.project(), m_workspace.plan(), step, m_strip) == name)
            return &step;
    return nullptr;
}

QString BlockLog::head() const
{
    //: %1 is a block's name, "A1"
    return m_block.isEmpty() ? QString() : tr("Block %1").arg(m_block);
}

QString BlockLog::placeSays() const
{
    if (m_block.isEmpty())
        return {};
    const Project &project = m_workspace.project();
    const auto told = [](std::int64_t strip, std::int64_t place) {
        //: where a block was stitched: the strip's number and the block's place on it
        return tr("Strip %1, place %2").arg(strip).arg(place);
    };
    if (const auto at = record())
        return told(project.made.blocks[*at].strip, project.made.blocks[*at].place);
    const Step *step = stitching();
    if (step == nullptr)
        return {};
    const Project after = withDone(project, m_workspace.plan(), *step, m_strip);
    if (after.made.blocks.size() == project.made.blocks.size())
        return {};
    return told(after.made.blocks.back().strip, after.made.blocks.back().place);
}

FigureView BlockLog::along() const
{
    return m_block.isEmpty() ? FigureView() : figureOf(m_along, m_workspace.project().marks());
}

FigureView BlockLog::across() const
{
    return m_block.isEmpty() ? FigureView() : figureOf(m_across, m_workspace.project().marks());
}

QString BlockLog::plannedSays() const
{
    const Pair &planned = m_workspace.plan().block.outline;
    const Marks marks = m_workspace.project().marks();
    if (const auto off = offItsSize(m_workspace.project(), m_workspace.plan(), {m_along, m_across}))
        //: a stitched outline that is off its planned size %1 × %2 by %3; %4 is the station that judges it
        return tr("Planned {%1} × {%2}, off by {%3}: %4 says what to do")
            .arg(figureText(planned.along, marks), figureText(planned.across, marks), figureText(*off, marks),
                 stationText(Station::Trim));
    //: the size the stitched outline should have, along and across
    return tr("Planned {%1} × {%2}").arg(figureText(planned.along, marks), figureText(planned.across, marks));
}

bool BlockLog::asPlanned() const
{
    const Pair &planned = m_workspace.plan().block.outline;
    return m_along == planned.along && m_across == planned.across;
}

QVariantList BlockLog::flags() const
{
    QVariantList list;
    for (const Worded &flag : flagsKnown) {
        const QString code = toQt(flag.code);
        list.append(QVariantMap{{QStringLiteral("code"), code},
                                {QStringLiteral("says"), flagSays(code)},
                                {QStringLiteral("chosen"), m_flags.contains(code)}});
    }
    return list;
}

void BlockLog::setWords(const QString &words)
{
    if (words == m_words)
        return;
    m_words = words;
    emit changed();
}

void BlockLog::setFace(int face)
{
    m_face = face == 1 ? 1 : 0;
    emit changed();
}

QUrl BlockLog::thumb(std::size_t face) const
{
    return m_faces[face] ? m_keeper.thumb(m_faces[face]->sha, m_faces[face]->format) : QUrl();
}

bool BlockLog::canSave() const
{
    return !m_block.isEmpty() && m_keeper.book().canWrite() && (record() || stitching() != nullptr);
}

void BlockLog::step(Length &value, Length planned, int marks)
{
    // From a size between two marks the first step goes to the mark it lies before.
    const Length mark = m_workspace.project().finest;
    const std::int64_t at = marks > 0 ? value.floorDiv(mark) : value.ceilDiv(mark);
    const Length next = mark * (at + marks);
    // An outline half or twice its size is a slip of the hand.
    if (m_block.isEmpty() || next * 2 < planned || next > planned * 2)
        return;
    value = next;
    emit changed();
}

void BlockLog::stepAlong(int marks)
{
    step(m_along, m_workspace.plan().block.outline.along, marks);
}

void BlockLog::stepAcross(int marks)
{
    step(m_across, m_workspace.plan().block.outline.across, marks);
}

void BlockLog::setAsPlanned()
{
    m_along = m_workspace.plan().block.outline.along;
    m_across = m_workspace.plan().block.outline.across;
    emit changed();
}

void BlockLog::toggleFlag(const QString &code)
{
    if (!m_flags.removeOne(code))
        m_flags.append(code);
    emit changed();
}

void BlockLog::dropPicture(int face)
{
    const std::size_t at = face == 1 ? 1 : 0;
    if (!m_faces[at])
        return;
    const auto dropped =
        m_keeper.book().dropDraft(m_workspace.id(), m_block, face == 1 ? Face::Back : Face::Front);
    if (dropped)
        m_faces[at].reset();
    else
        m_problem = storeSentence(dropped.error());
    emit changed();
}

void BlockLog::dismissProblem()
{
    m_problem.clear();
    emit changed();
}

void BlockLog::receive(const QString &path, bool passing)
{
    if (m_block.isEmpty() || !m_keeper.book().canWrite())
        return;
    m_problem.clear();
    m_keeping = true;
    m_keeper.keep({m_workspace.id(), m_block, m_face == 1 ? Face::Back : Face::Front}, path, passing);
    emit changed();
}

bool BlockLog::isHere(const PhotoPlace &place) const
{
    return place.project == m_workspace.id() && place.block == m_block;
}

void BlockLog::take(const PhotoPlace &place, const Photograph &photo)
{
    // Of a block she has left meanwhile it waits as a draft.
    if (!isHere(place))
        return;
    const std::size_t face = place.face == Face::Back ? 1 : 0;
    m_faces[face] = photo;
    m_keeping = m_keeper.keeping();
    emit changed();
    emit pictureKept(static_cast<int>(face));
    if (m_saveWhenKept && !m_keeping)
        (void)save();
}

void BlockLog::refuse(const PhotoPlace &place, const QString &says)
{
    if (!isHere(place))
        return;
    m_keeping = m_keeper.keeping();
    m_saveWhenKept = false;
    m_problem = says;
    emit changed();
}

bool BlockLog::save()
{
    if (!canSave())
        return false;
    if (m_keeping) {
        m_saveWhenKept = true;
        return true;
    }
    return commit();
}

bool BlockLog::commit()
{
    const System system = m_workspace.project().system;
    Note note;
    note.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    note.block = m_block;
    note.words = m_words;
    note.flags = m_flags;
    note.along = QString::fromStdString(writeLength(m_along, system));
    note.across = QString::fromStdString(writeLength(m_across, system));
    note.faces = m_faces;
    Project next = m_workspace.project();
    auto at = record();
    std::string about;
    if (!at) {
        const Step *step = stitching();
        about = step->id;
        next = withDone(next, m_workspace.plan(), *step, m_strip);
        const std::string name = m_block.toStdString();
        for (std::size_t i = 0; i < next.made.blocks.size(); ++i)
            if (next.made.blocks[i].block == name)
                at = i;
    }
    if (!at)
        return false;
    MadeBlock &made = next.made.blocks[*at];
    made.outline = {m_along, m_across};
    made.notes.push_back(note.id.toStdString());
    NoteBook &book = m_keeper.book();
    const QString project = m_workspace.id();
    const QString block = m_block;
    m_saveWhenKept = false;
    // A block stitched just now is work done, so that Back asks whether it was spoiled.
    const bool done =
        m_workspace.commitBy(about.empty() ? "log" : "done", next, about,
                             [&](const Command &command) { return book.log(project, command, note); });
    if (!done)
        return false;
    load();
    emit changed();
    emit saved(block);
    return true;
}

} // namespace matside
