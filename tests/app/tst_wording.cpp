// SPDX-License-Identifier: MIT
//
// Nothing reaches the screen as a code: every code that the rooms without words can give has words. The codes
// are gathered from their source text, so that a new one without words is found on the day it is written.
#include "app/field.h"
#include "app/wording.h"
#include "plan/plan.h"
#include "plan/working.h"
#include "project/codec.h"

#include "testing.h"
#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include <set>

using namespace matside;

namespace {

QString contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// Everything a pattern's first group catches in a room's sources.
std::set<std::string> caught(const char *room, const char *pattern)
{
    std::set<std::string> found;
    const QDir dir(QStringLiteral(MATSIDE_CPP_DIR "/") + QLatin1String(room));
    const QRegularExpression expression(QString::fromLatin1(pattern));
    for (const QString &name : dir.entryList({QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files)) {
        auto matches = expression.globalMatch(contents(dir.filePath(name)));
        while (matches.hasNext())
            found.insert(matches.next().captured(1).toStdString());
    }
    return found;
}

bool worded(std::initializer_list<std::span<const Worded>> lists, const std::string &code)
{
    return std::any_of(lists.begin(), lists.end(),
                       [&](std::span<const Worded> list) { return wordsFor(list, code).has_value(); });
}

Project example()
{
    const std::string json = contents(QStringLiteral(TEST_DATA_DIR "/project-example.json")).toStdString();
    return readProject(json).value().project;
}

/// \x22 is a quotation mark, spelt so that moc keeps its footing.
constexpr const char *kebab = "\\x22([a-z]+(?:-[a-z0-9]+)+)\\x22";

} // namespace

class TestWording : public QObject {
    Q_OBJECT
private slots:
    void everyProblemAndOfferHasWords()
    {
        // Hyphenated words of plan and project that are no codes: formats, spellings, the file's own keys.
        const std::set<std::string> others{
            "matside-project", "sashing-back", "sashing-front", "put-off", "clean-back", "new-bobbin",
            "strip-torn",
            // Refusals to put two together are told by mergewords (tst_merging).
            "merge-system", "merge-unreadable", "merge-unsound"};
        int codes = 0;
        for (const char *room : {"plan", "project"})
            for (const std::string &code : caught(room, kebab)) {
                if (others.count(code))
                    continue;
                ++codes;
                QVERIFY2(worded({problemWords(), cautionWords(), fileWords(), offerWords()}, code),
                         code.c_str());
            }
        QVERIFY(codes > 40);
        QVERIFY(worded({fileWords()}, "needed"));
    }

    void everyKindOfValueHasWords()
    {
        const auto kinds =
            caught("project", "\\x22wrong-type\\x22,\\s*\\{std::string\\(\\x22([a-z]+)\\x22\\)\\}");
        QVERIFY(kinds.size() > 4);
        for (const std::string &kind : kinds)
            QVERIFY2(worded({kindWords()}, kind), kind.c_str());
    }

    void everyStepHasWords()
    {
        for (int i = 0; i <= static_cast<int>(Does::CutBias); ++i) {
            Step step;
            step.does = static_cast<Does>(i);
            step.count = 3;
            const std::string name = nameOf(step.does);
            QVERIFY2(worded({doesWords()}, name), name.c_str());
            QVERIFY2(worded({titleWords()}, name), name.c_str());
            QVERIFY2(actionText(step).contains(QRegularExpression(QStringLiteral("^[A-Z]"))), name.c_str());
            QVERIFY(!doesText(step, example()).contains(u'%'));
            QVERIFY(!titleText(step, 2).contains(u'%'));
            QVERIFY(!titleText(step, 2, QStringLiteral("B2")).contains(u'%'));
        }
        for (int i = 0; i <= static_cast<int>(Station::Edge); ++i)
            QVERIFY(!stationText(static_cast<Station>(i)).isEmpty());
    }

    void pressingTellsOfPatchesOnlyWhereThereAreSome()
    {
        Project project = freshProject(System::Inch);
        for (const char *says : {"Press the block.", "Press the block, now that its patches are trimmed."}) {
            const std::vector<Step> all = steps(project, plan(project));
            const auto press = std::find_if(all.begin(), all.end(), [](const Step &step) {
                return step.does == Does::PressBlock && !step.trial;
            });
            QVERIFY(press != all.end());
            QCOMPARE(doesText(*press, project), QString::fromLatin1(says));
            project.patches.push_back(
                {"leaf", Length::inches(2), Length::inches(3), Length::inches(0, 1, 2), "front", 2, {}});
        }
    }

    void everyCheckAndGuardHasWords()
    {
        const auto checks = caught("bench", "check\\s*=\\s*(?:[^;\\x22]*\\?\\s*)?\\x22([a-z-]+)\\x22");
        const auto guards = caught("bench", "caution\\s*=\\s*(?:[^;\\x22]*\\?\\s*)?\\x22([a-z-]+)\\x22");
        QVERIFY(checks.size() > 15 && guards.size() > 4);
        for (const std::string &check : checks)
            QVERIFY2(worded({checkWords()}, check), check.c_str());
        for (const std::string &guard : guards)
            QVERIFY2(worded({guardWords()}, guard) && worded({hazardWords()}, guard), guard.c_str());
        // And those that really come about, however they were written down.
        Project project = example();
        for (const Build build : {Build::Reversible, Build::CleanBack})
            for (const CleanBack back : {CleanBack::Layered, CleanBack::Bagged}) {
                project.build = build;
                project.cleanBack = back;
                project.strip.harvest = build == Build::Reversible && back == CleanBack::Bagged;
                for (const Step &step : steps(project, plan(project))) {
                    QVERIFY2(step.check.empty() || worded({checkWords()}, step.check), step.check.c_str());
                    QVERIFY2(step.caution.empty() || worded({guardWords()}, step.caution),
                             step.caution.c_str());
                }
            }
    }

    void everyMishapAndItsAnswersHaveWords()
    {
        for (int i = 0; i <= static_cast<int>(Mishap::ChangedMind); ++i) {
            const auto mishap = static_cast<Mishap>(i);
            QVERIFY2(worded({mishapWords()}, nameOf(mishap)), nameOf(mishap).c_str());
            QCOMPARE(worded({askedWords()}, nameOf(mishap)),
                     asksOf(mishap) != Asks::Nothing && asksOf(mishap) != Asks::Block);
        }
        int codes = 0;
        for (const std::string &code :
             caught("bench", "(?:Said|push_back\\(|=|,)\\s*\\{+\\x22([a-z]+(?:-[a-z]+)*)\\x22,\\s*\\{")) {
            ++codes;
            QVERIFY2(worded({saidWords()}, code), code.c_str());
        }
        QVERIFY(codes > 15);
    }

    void everyTermAndFigureHasWords()
    {
        const auto terms = caught("plan", "\\.(?:given|from|fixed)\\(\\x22([A-Za-z]+)\\x22");
        QVERIFY(terms.size() > 30);
        for (const std::string &term : terms)
            QVERIFY2(worded({termWords()}, term), term.c_str());
        const auto figures = caught("plan", "Sum\\{\\x22([A-Za-z.]+)\\x22");
        QVERIFY(figures.size() > 30);
        for (const std::string &figure : figures)
            QVERIFY2(worded({figureWords()}, figure), figure.c_str());
    }

    void everyFieldHasWords()
    {
        const Project project = example();
        for (const Field &field : fieldsOf(project)) {
            const std::string label = field.label.empty() ? field.pointer : field.label;
            QVERIFY2(worded({fieldWords()}, label), label.c_str());
            QVERIFY2(worded({fieldWords()}, std::string("group:") + field.group), field.group);
            for (const std::string &choice : field.choices)
                if (!field.pointer.ends_with("/finest")) // ruler's marks speak for themselves
                    QVERIFY2(worded({choiceWords()}, choice), choice.c_str());
        }
    }

    void noCodeIsWordedTwice()
    {
        for (const auto list : {problemWords(), cautionWords(), fileWords(), offerWords(), kindWords(),
                                doesWords(), titleWords(), actionWords(), checkWords(), guardWords(),
                                termWords(), figureWords(), choiceWords(), fieldWords(), commandWords()}) {
            std::set<std::string_view> codes;
            for (const Worded &word : list) {
                QVERIFY2(codes.insert(word.code).second, std::string(word.code).c_str());
                QVERIFY(*word.text);
            }
        }
    }

    void sentencesAreFilled()
    {
        // A share, lengths on their marks and an ordinal, each in its place.
        const Marks marks = freshProject(System::Inch).marks();
        const Problem tight{"/strip",
                            "strip-is-tight",
                            {Told{Length::inches(0, 17, 64), Round::Nearest}, std::int64_t(4)},
                            {}};
        QCOMPARE(sentence(tight, marks),
                 QStringLiteral("A generous 1/4 in is left over on each strip; a little "
                                "more draw-up and the fourth block will not fit."));
        const Problem drawn{"/drawUp/along", "draw-up-out-of-range", {Share{200'000}, Share{150'000}}, {}};
        QVERIFY(sentence(drawn, marks).startsWith(QStringLiteral("A draw-up of 20 % is not likely")));
        QVERIFY(sentence(drawn, marks).contains(QStringLiteral("15 %")));
    }

    void badEntriesGetTheNearestValue()
    {
        const Project project = example();
        const std::vector<Field> fields = fieldsOf(project);
        const auto field = [&](const char *pointer) {
            return *std::find_if(fields.begin(), fields.end(),
                                 [&](const Field &f) { return f.pointer == pointer; });
        };
        const auto faultOf = [&](const char *pointer, const char *text) {
            return readEntry(field(pointer), QString::fromLatin1(text), project);
        };
        QVERIFY(readEntry(field("/seam"), QStringLiteral("1/2"), project).ok());
        QVERIFY(!faultOf("/seam", "soft").error().says.isEmpty());
        QVERIFY(faultOf("/blocks/columns", "0").error().nearest == OfferValue(std::int64_t(1)));
        QVERIFY(faultOf("/blocks/columns", "4000").error().nearest == OfferValue(std::int64_t(1000)));
        QVERIFY(faultOf("/drawUp/along", "40").error().nearest == OfferValue(Share{150'000}));
        const auto tooSmall = faultOf("/blocks/width", "-3");
        QVERIFY(!tooSmall.ok());
        QVERIFY(std::get<Length>(tooSmall.error().nearest) > Length());
    }
};

QTEST_GUILESS_MAIN(TestWording)
#include "tst_wording.moc"
