// SPDX-License-Identifier: MIT
#include "faults/deeds.h"

#include "project/codec.h"
#include "store/files.h"
#include "store/photohelp.h"

#include <QDir>

using namespace matside;

namespace deeds {

namespace {

Outcome failed(const StoreError &error)
{
    // Nothing to undo, or a project that was thrown away: there is simply nothing to do.
    if (error.code == StoreCode::NothingLeft || error.code == StoreCode::NotFound)
        return {};
    return {error.code == StoreCode::Disk ? End::NoRoom : End::Broken,
            u"store %1 %2"_qs.arg(int(error.code)).arg(error.detail)};
}

Outcome failed(const PhotoError &error)
{
    return {error.code == PhotoCode::Disk ? End::NoRoom : End::Broken,
            u"photograph %1 %2"_qs.arg(int(error.code)).arg(error.detail)};
}

Outcome failed(const ShareError &error)
{
    return {error.code == ShareCode::Disk ? End::NoRoom : End::Broken,
            u"share %1 %2 %3"_qs.arg(int(error.code)).arg(error.name, error.detail)};
}

template <class T, class Error> Outcome ended(const Result<T, Error> &result)
{
    return result ? Outcome() : failed(result.error());
}

/// A document of some kilobytes now and then, so that pages overflow.
QString documentOf(const QString &name, unsigned long slack, std::size_t note)
{
    Project project = freshProject(System::Inch);
    project.name = name.toStdString();
    project.slack = Length::ticks(std::int64_t(slack));
    QString text = QString::fromStdString(writeProject(project));
    const qsizetype end = text.lastIndexOf(u'}');
    return text.insert(end, QString(qsizetype(note), u' '));
}

} // namespace

Deeds::Deeds(QString root, unsigned seed) : m_root(std::move(root)), m_random(seed) {}

Outcome Deeds::open()
{
    close();
    if (const auto restored = finishRestoring(shelf()); !restored)
        return failed(restored.error());
    auto store = openStore(shelf());
    if (!store)
        return failed(store.error());
    if (!store.value()->canWrite())
        return {End::NoRoom, u"opened for reading only"_qs};
    m_store = std::move(store).value();
    m_book = std::make_unique<NoteBook>(*m_store);
    if (const auto forgotten = m_book->forgetUnused(); !forgotten)
        return failed(forgotten.error());
    return ended(sweepPhotographs(shelf()));
}

void Deeds::close()
{
    m_book.reset();
    m_store.reset();
}

Outcome Deeds::next()
{
    static const std::vector<std::pair<const char *, Deed>> all{
        {"create", &Deeds::create},    {"edit", &Deeds::edit},           {"edit", &Deeds::edit},
        {"edit", &Deeds::edit},        {"undo", &Deeds::undo},           {"redo", &Deeds::redo},
        {"rename", &Deeds::rename},    {"turn", &Deeds::turnOnShelf},    {"undo shelf", &Deeds::undoShelf},
        {"setting", &Deeds::setting},  {"photo", &Deeds::takePhoto},     {"photo", &Deeds::takePhoto},
        {"photo", &Deeds::takePhoto},  {"note", &Deeds::logNote},        {"note", &Deeds::logNote},
        {"note", &Deeds::logNote},     {"forget", &Deeds::forget},       {"copy", &Deeds::copyDatabase},
        {"back up", &Deeds::backUp},   {"share", &Deeds::share},         {"bring in", &Deeds::bringIn},
        {"export", &Deeds::exportAll}, {"close and open", &Deeds::open},
    };
    if (!isOpen())
        return open();
    const auto &[name, deed] = all[m_random() % all.size()];
    Outcome outcome = (this->*deed)();
    outcome.told.prepend(QString::fromLatin1(name) + u' ');
    return outcome;
}

QString Deeds::anyProject()
{
    const auto rows = m_store->projects();
    if (!rows || rows.value().empty())
        return {};
    return rows.value()[m_random() % rows.value().size()].id;
}

QString Deeds::anyBlock()
{
    return u"A%1"_qs.arg(1 + m_random() % 6);
}

QString Deeds::nextName(const QString &end)
{
    (void)madeFolder(m_root + u"/out"_qs); // as the program makes the folder of her documents
    return u"out/%1%2"_qs.arg(++m_files).arg(end);
}

StoreResult<Command> Deeds::anyEdit(const QString &project)
{
    const auto held = m_store->load(project);
    if (!held)
        return held.error();
    const std::size_t extra = m_random() % 8 == 0 ? m_random() % 20'000 : 0;
    return Command{{u"edit"_qs, u"slack"_qs},
                   held.value(),
                   documentOf(u"Runner %1"_qs.arg(m_random() % 100), m_random() % 1'000'000, extra)};
}

Outcome Deeds::create()
{
    return ended(m_store->create(documentOf(u"Runner"_qs, m_random() % 1000, 0)));
}

Outcome Deeds::edit()
{
    const QString project = anyProject();
    const auto command = anyEdit(project);
    return command ? ended(m_store->applyEdit(project, command.value())) : failed(command.error());
}

Outcome Deeds::undo()
{
    return ended(m_store->undo(anyProject()));
}
Outcome Deeds::redo()
{
    return ended(m_store->redo(anyProject()));
}
Outcome Deeds::rename()
{
    return ended(m_store->rename(anyProject(), u"Table %1"_qs.arg(m_random() % 100)));
}

Outcome Deeds::turnOnShelf()
{
    const QString project = anyProject();
    switch (m_random() % 6) {
    case 0:
        return ended(m_store->throwAway(project));
    case 1:
        return ended(m_store->bringBack(project));
    case 2:
        return ended(m_store->makeAgain(project, u"Again"_qs));
    default:
        return ended(m_store->putAway(project));
    }
}

Outcome Deeds::undoShelf()
{
    return ended(m_random() % 3 == 0 ? m_store->redoShelf() : m_store->undoShelf());
}

Outcome Deeds::setting()
{
    return ended(m_store->setSetting(settings::station, u"cut %1"_qs.arg(m_random() % 100)));
}

Outcome Deeds::takePhoto()
{
    const QString project = anyProject();
    if (project.isEmpty())
        return {};
    const bool grain = m_random() % 4 == 0;
    // Some pictures come twice.
    const auto kept = m_book->folder().keep(
        photohelp::encoded(photohelp::picture(quint32(m_random() % 200), {96, 64}, grain)));
    if (!kept)
        return failed(kept.error());
    const Face face = m_random() % 2 == 0 ? Face::Front : Face::Back;
    return ended(m_book->keepDraft(project, anyBlock(), face, kept.value()));
}

Outcome Deeds::logNote()
{
    const QString project = anyProject();
    const QString block = anyBlock();
    const auto drafts = m_book->drafts(project, block);
    if (!drafts)
        return failed(drafts.error());
    const auto command = anyEdit(project);
    if (!command)
        return failed(command.error());
    const Note note = photohelp::noteOf(block, drafts.value()[0], drafts.value()[1]);
    return ended(m_book->log(project, command.value(), note));
}

Outcome Deeds::forget()
{
    return ended(m_book->forgetUnused());
}

Outcome Deeds::copyDatabase()
{
    const QString name = nextName(u".sqlite"_qs);
    const auto copied = m_store->backupTo(m_root + u'/' + name);
    if (copied)
        gotOut(name);
    return ended(copied);
}

Outcome Deeds::backUp()
{
    const QString name = nextName(QString(backupEnd));
    const auto copy = copyForBackup(*m_store, m_root + u'/' + name);
    if (!copy)
        return failed(copy.error());
    const auto written = writeBackup(copy.value(), m_book->folder(), m_root + u'/' + name);
    if (written)
        gotOut(name);
    return ended(written);
}

Outcome Deeds::share()
{
    const auto parcel = gather(*m_store, *m_book, anyProject());
    if (!parcel)
        return failed(parcel.error());
    const QString name = nextName(QString(shareEnd));
    const auto written = writeShare(parcel.value(), m_book->folder(), m_root + u'/' + name);
    if (written) {
        m_lastShare = name;
        gotOut(name);
    }
    return ended(written);
}

Outcome Deeds::bringIn()
{
    if (m_lastShare.isEmpty())
        return {};
    const QString path = m_root + u'/' + m_lastShare;
    const auto inside = lookInside(path);
    if (!inside)
        return failed(inside.error());
    const auto notes = keepPictures(path, inside.value(), m_book->folder());
    if (!notes)
        return failed(notes.error());
    return ended(
        m_book->bringIn(inside.value().parcel.project, inside.value().parcel.document, notes.value()));
}

Outcome Deeds::exportAll()
{
    const QString name = nextName(u"-projects"_qs);
    const auto exported = m_store->exportReadable(m_root + u'/' + name);
    if (!exported)
        return failed(exported.error());
    for (const QString &file : exported.value().files)
        gotOut(file.mid(m_root.size() + 1));
    return {};
}

} // namespace deeds
