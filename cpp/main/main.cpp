// SPDX-License-Identifier: MIT
#include "app/demo.h"
#include "app/plancommand.h"
#include "app/sharecommand.h"
#include "app/sharing.h"
#include "main/pictures.h"
#include "main/refused.h"
#include "main/room.h"
#include "sheet/sheetcommand.h"

#include <QCommandLineParser>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTranslator>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <optional>

namespace matside {
namespace {

bool asked(int argc, char **argv, const char *option)
{
    for (int i = 1; i < argc; ++i)
        if (std::strcmp(argv[i], option) == 0)
            return true;
    return false;
}

/// What stands behind an option, before anything of Qt reads it.
QString valueAsked(int argc, char **argv, const char *option)
{
    for (int i = 1; i + 1 < argc; ++i)
        if (std::strcmp(argv[i], option) == 0)
            return QString::fromLocal8Bit(argv[i + 1]);
    return {};
}

/// Pictures and the self test draw without a screen and without a graphics card.
void drawWithoutScreen()
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
}

double reportedPxPerMm()
{
    const QScreen *screen = QGuiApplication::primaryScreen();
    return screen ? screen->physicalDotsPerInch() / 25.4 : 0;
}

int refuse(const QString &says)
{
    std::fprintf(stderr, "%s\n", qPrintable(says));
    return 1;
}

/// Letter where lengths are told in inches by custom, else A4.
QString printSheet(const Project &project, const Plan &plan, const QString &path, const QString &named)
{
    SheetForm form = formNamed(named).value_or(SheetForm());
    const bool letter = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
    form.paper = letter ? PaperSize::Letter : PaperSize::A4;
    return saveSheet(project, plan, path, form);
}

int runWindow(const QCommandLineParser &options, std::optional<Spoken> &words)
{
    const bool drawing = options.isSet(QStringLiteral("pictures")) ||
                         options.isSet(QStringLiteral("self-test")) ||
                         options.isSet(QStringLiteral("check-words"));
    QTemporaryDir passing;
    QString dir = options.value(QStringLiteral("data"));
    if (dir.isEmpty())
        dir = drawing ? passing.path() : QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    auto store = openedOrSaid(dir, !drawing, reportedPxPerMm());
    if (!store)
        return 1;
    const bool demo = drawing || options.isSet(QStringLiteral("demo"));
    QString first;
    std::optional<QString> document;
    if (options.isSet(QStringLiteral("pictures")) && !options.positionalArguments().isEmpty()) {
        QFile file(options.positionalArguments().constFirst());
        if (!file.open(QIODevice::ReadOnly))
            return refuse(QGuiApplication::translate("Main", "%1 cannot be read.").arg(file.fileName()));
        document = QString::fromUtf8(file.readAll());
    }
    if (demo && store->canWrite()) {
        const auto made = store->ensureDemo(document ? *document : demoProject());
        if (!made)
            return refuse(storeSentence(made.error()));
        first = made.value();
    }
    Room room(std::move(store), drawing ? 5.87 : reportedPxPerMm(),
              words ? options.value(QStringLiteral("language")) : QStringLiteral("en"));
    words.reset(); // the room has its own
    room.sharing().setPrinter(printSheet);
    if (first.isEmpty())
        room.session().resume();
    else
        room.session().openProject(first);
    if (!drawing)
        room.steps().askAboutLast();
    // A file pressed elsewhere on the tablet: looked into first, like any.
    if (!drawing && !options.positionalArguments().isEmpty())
        room.look(options.positionalArguments().constFirst());
    if (!room.show())
        return refuse(QGuiApplication::translate("Main", "The window could not be opened."));
    if (!drawing)
        room.watchTablet();
    if (options.isSet(QStringLiteral("pictures")))
        return takePictures(room, options.value(QStringLiteral("pictures")),
                            options.value(QStringLiteral("only")), options.value(QStringLiteral("at")));
    if (options.isSet(QStringLiteral("self-test")))
        return selfTest(room);
    if (options.isSet(QStringLiteral("check-words")))
        return checkWords(room, options.value(QStringLiteral("only")), options.value(QStringLiteral("at")),
                          !options.isSet(QStringLiteral("words")));
    return QGuiApplication::exec();
}

int runDiagrams(const QCommandLineParser &options)
{
    if (options.positionalArguments().isEmpty())
        return refuse(QGuiApplication::translate("Main", "--diagrams FOLDER needs a project file after it."));
    const SheetAnswer answer =
        diagramsOf(options.positionalArguments().constFirst(), options.value(QStringLiteral("diagrams")));
    std::fprintf(stderr, "%s", qPrintable(answer.sentences));
    if (answer.pages > 0 && answer.exit == 0)
        std::fprintf(stdout, "%d diagrams written\n", answer.pages);
    return answer.exit;
}

int runSheet(const QCommandLineParser &options)
{
    const auto paper = paperNamed(options.value(QStringLiteral("paper")));
    if (!paper)
        return refuse(QGuiApplication::translate("Main", "The paper is a4 or letter."));
    auto form = formNamed(options.value(QStringLiteral("form")));
    if (!form)
        return refuse(QGuiApplication::translate("Main", "The form is long, short or class."));
    form->paper = *paper;
    form->brief = form->brief || options.isSet(QStringLiteral("short"));
    if (options.positionalArguments().isEmpty())
        return refuse(QGuiApplication::translate("Main", "--sheet OUT.pdf needs a project file after it."));
    const SheetAnswer answer =
        sheetOf(options.positionalArguments().constFirst(), options.value(QStringLiteral("sheet")), *form);
    std::fprintf(stderr, "%s", qPrintable(answer.sentences));
    if (answer.pages > 0)
        std::fprintf(stdout, "%d pages written\n", answer.pages);
    return answer.exit;
}

void describe(QCommandLineParser &options)
{
    options.setApplicationDescription(
        QGuiApplication::translate("Main", "The next cut, beside the cutting mat."));
    options.addHelpOption();
    options.addVersionOption();
    options.addOption({QStringLiteral("data"),
                       QGuiApplication::translate("Main", "Keep the data in this folder."),
                       QStringLiteral("DIR")});
    options.addOption({QStringLiteral("demo"), QGuiApplication::translate("Main", "Open the demo project.")});
    options.addOption(
        {QStringLiteral("plan"),
         QGuiApplication::translate("Main", "Print the plan of a project file (- for standard input)."),
         QStringLiteral("FILE")});
    options.addOption({QStringLiteral("pictures"),
                       QGuiApplication::translate("Main", "Draw every station into this folder."),
                       QStringLiteral("DIR")});
    options.addOption({QStringLiteral("share"),
                       QGuiApplication::translate(
                           "Main", "Write the project named last, with its notes and photographs, to a "
                                   "new file."),
                       QStringLiteral("OUT.matside")});
    options.addOption({QStringLiteral("look-inside"),
                       QGuiApplication::translate("Main", "Say what is inside such a file."),
                       QStringLiteral("FILE")});
    options.addOption({QStringLiteral("open-shared"),
                       QGuiApplication::translate("Main", "Say what is inside, and add it to the shelf."),
                       QStringLiteral("FILE")});
    options.addOption({QStringLiteral("sheet"),
                       QGuiApplication::translate("Main", "Write the paper sheet of a project file."),
                       QStringLiteral("OUT.pdf")});
    options.addOption({QStringLiteral("diagrams"),
                       QGuiApplication::translate("Main", "Write the drawings of the sheet as SVG files."),
                       QStringLiteral("FOLDER")});
    options.addOption({QStringLiteral("paper"),
                       QGuiApplication::translate("Main", "Paper of the sheet: a4 or letter."),
                       QStringLiteral("SIZE"), QStringLiteral("a4")});
    options.addOption({QStringLiteral("form"),
                       QGuiApplication::translate(
                           "Main", "Form of the sheet: long, short, or class, with a list for every kit."),
                       QStringLiteral("FORM"), QStringLiteral("long")});
    options.addOption(
        {QStringLiteral("short"), QGuiApplication::translate("Main", "The sheet on one page.")});
    options.addOption({QStringLiteral("back-up"),
                       QGuiApplication::translate("Main", "Write everything to one new file."),
                       QStringLiteral("OUT.matside-backup")});
    options.addOption({QStringLiteral("restore"),
                       QGuiApplication::translate("Main", "Put a backup in place where no project is yet."),
                       QStringLiteral("FILE")});
    const auto hidden = [&](const char *name, const char *value = nullptr) {
        QCommandLineOption option(QString::fromLatin1(name), QString(), QString::fromLatin1(value));
        option.setFlags(QCommandLineOption::HiddenFromHelp);
        options.addOption(option);
    };
    hidden("self-test");
    hidden("check-words");
    options.addOption({QStringLiteral("language"),
                       QGuiApplication::translate("Main", "Speak this language: %1.")
                           .arg(Spoken::known().join(QStringLiteral(", "))),
                       QStringLiteral("CODE")});
    hidden("only", "NAMES"); // of --pictures and --check-words: the pages wanted
    hidden("at", "SIZES");   // of both: the sizes of screen wanted, "1280x800,800x1280"
    hidden("words", "FILE"); // a compiled translation to show instead of the words of the source
    options.addPositionalArgument(
        QStringLiteral("FILE"),
        QGuiApplication::translate(
            "Main",
            "A project, share or backup file to look into, or a project file for --pictures or --sheet."),
        QStringLiteral("[FILE]"));
}

/// What is only asked of the command line is answered without a screen.
bool asksAboutItself(int argc, char **argv)
{
    const auto options = {"--help", "-h", "--help-all", "--version", "-v"};
    return std::ranges::any_of(options, [&](const char *option) { return asked(argc, argv, option); });
}

int answerAboutItself(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    Spoken words;
    if (!words.speak(valueAsked(argc, argv, "--language")))
        (void)words.speak(Spoken::ofSystem());
    QCommandLineParser options;
    describe(options);
    options.process(app); // says it and ends the program
    return 0;
}

int run(int argc, char **argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("matside"));
    QCoreApplication::setApplicationVersion(QStringLiteral(MATSIDE_VERSION));
    // Until a language is chosen, numbers are written as the words of the source are.
    QLocale::setDefault(QLocale::c());
    if (asksAboutItself(argc, argv))
        return answerAboutItself(argc, argv);
    if (asked(argc, argv, "--plan")) {
        const QCoreApplication app(argc, argv);
        const QStringList arguments = QCoreApplication::arguments();
        const qsizetype at = arguments.indexOf(QStringLiteral("--plan"));
        return at + 1 < arguments.size()
                   ? runPlanCommand(arguments[at + 1])
                   : refuse(QStringLiteral("--plan needs a file, or - for standard input."));
    }
    for (const char *command : {"--share", "--look-inside", "--open-shared", "--back-up", "--restore"})
        if (asked(argc, argv, command)) {
            const QCoreApplication app(argc, argv);
            return runShareCommand(QCoreApplication::arguments());
        }
    if (asked(argc, argv, "--pictures") || asked(argc, argv, "--self-test") ||
        asked(argc, argv, "--check-words") || asked(argc, argv, "--sheet") || asked(argc, argv, "--diagrams"))
        drawWithoutScreen();
    const QGuiApplication app(argc, argv);
    // What is said before the store with her choice is open.
    std::optional<Spoken> words(std::in_place);
    if (!words->speak(valueAsked(argc, argv, "--language")))
        (void)words->speak(Spoken::ofSystem());
    QGuiApplication::setDesktopFileName(QStringLiteral("org.matside.Matside"));
    QCommandLineParser options;
    describe(options);
    options.process(app);
    if (const QString code = options.value(QStringLiteral("language"));
        !code.isEmpty() && !Spoken::known().contains(code))
        return refuse(QGuiApplication::translate("Main", "The language is one of %1.")
                          .arg(Spoken::known().join(QStringLiteral(", "))));
    QTranslator given;
    if (const QString file = options.value(QStringLiteral("words")); !file.isEmpty()) {
        if (!given.load(file))
            return refuse(QStringLiteral("%1 holds no words.").arg(file));
        words.reset();
        QCoreApplication::installTranslator(&given);
    }
    if (options.isSet(QStringLiteral("diagrams")))
        return runDiagrams(options);
    return options.isSet(QStringLiteral("sheet")) ? runSheet(options) : runWindow(options, words);
}

} // namespace
} // namespace matside

int main(int argc, char **argv)
{
    return matside::run(argc, argv);
}
