#include "ui/shell/session.h"

#include <QSignalSpy>
#include <QTest>

#include "indexer/erasure/empty_bin.h"
#include "indexer/intake/tagging.h"
#include "tests/support/child.h"
#include "tests/support/command.h"
#include "tests/support/consent_said.h"
#include "tests/ui/shell/fixture.h"

namespace quarterturn {
namespace {

class SessionTest : public testing::Test {
  protected:
    // put_into_bin() takes no day before the library was opened.
    void bin_since(PhotoId photo, const char* day) {
        library().history().apply(
            {.said = "put it into the bin", .binned = {{photo, parse_date(day)}}});
    }
    Library& library() { return open.session.library(); }
    QString last_said() { return said.isEmpty() ? QString() : said.back().front().toString(); }

    Edit rename(const std::string& name) {
        Client after = *library().clients().find(open.example.mira);
        after.name = name;
        return {"renamed her", [after](Library& l) { l.clients().change(after); }};
    }
    std::string her_name() { return library().clients().find(open.example.mira)->name; }

    OpenSession open;
    QSignalSpy changed{&open.session, &Session::records_changed};
    QSignalSpy said{&open.session, &Session::said};
};

TEST_F(SessionTest, OpensALibraryAndRemembersIt) {
    EXPECT_EQ(open.problem, QString());
    EXPECT_EQ(Session::last_library(), open.example.folder / "library");
}

TEST_F(SessionTest, SaysInASentenceWhyAFolderCannotBeOpened) {
    const QString problem = open.session.open(open.example.folder / "nothing here");
    EXPECT_FALSE(problem.isEmpty());
    EXPECT_TRUE(open.session.is_open());
    EXPECT_EQ(library().folder(), open.example.folder / "library");
}

TEST_F(SessionTest, SaysThatOlderRecordsWerePutInTheLibrary) {
    const Path place = open.example.folder / "library";
    const Path older = open.example.folder / "older";
    const Path elsewhere = open.example.folder / "elsewhere";
    const auto close = [&] {
        open.example.library = Library::create(elsewhere / "one");
        ASSERT_EQ(open.session.create(elsewhere / "other"), QString());
    };
    std::filesystem::create_directory(elsewhere);
    close();
    std::filesystem::copy_file(place / "records.sqlite", older);
    Library::open(place).clients().add(client_called("Ada Vale"));
    std::filesystem::copy_file(older, place / "records.sqlite",
                               std::filesystem::copy_options::overwrite_existing);
    ASSERT_EQ(open.session.open(place), QString());
    EXPECT_TRUE(open.session.standing_words().contains(
        QStringLiteral("records.sqlite is older than it was")))
        << qPrintable(open.session.standing_words());
    EXPECT_EQ(library().clients().all().size(), 1U) << "it can be looked at all the same";
}

TEST_F(SessionTest, LooksAtALibraryOnADiskThatCanOnlyBeReadAndChangesNothing) {
    const Path place = open.example.folder / "on a DVD";
    Library::create(place).clients().add(client_called("Ada Vale"));
    const auto answer = on_read_only_disk(place, [&] {
        Session session(real_file_system(), open.decoder, [] { return at("2026-11-07T08:00:00"); });
        QStringList told;
        QObject::connect(&session, &Session::said, [&](const QString& what) { told << what; });
        told << session.open(place) << session.standing_words();
        EXPECT_FALSE(session.changed_outside());
        const bool was_changed = session.change_records(
            {"added her", [](Library& l) { l.clients().add(client_called("Bea Holm")); }});
        told << (was_changed ? QStringLiteral("changed") : QStringLiteral("not changed"));
        told << QString::number(session.library().clients().all().size());
        return told.join(u'|').toStdString();
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk that can only be read.";
    const std::string why =
        (place / "records.sqlite").string() +
        " lies on a disk that can only be read: copy the library's folder to another disk and open "
        "it there.";
    EXPECT_EQ(*answer, "|Only to be looked at, nothing can be changed: " + why + '|' + why +
                           "|not changed|1");
}

TEST_F(SessionTest, SaysOnceThatItsRecordsWereWrittenOver) {
    const Path other = open.example.folder / "other";
    Library::create(other);
    output_of("cp " + shell_word(other / "records.sqlite") + ' ' +
              shell_word(open.example.folder / "library" / "records.sqlite"));
    EXPECT_FALSE(open.session.changed_outside());
    EXPECT_FALSE(open.session.changed_outside());
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said[0][0].toString().contains(QStringLiteral("was written over")));
    EXPECT_TRUE(said[0][0].toString().contains(QStringLiteral("Close every window")));
}

TEST_F(SessionTest, UndoesTagsAndOtherRecordsInTheOrderTheyWereDone) {
    const PhotoId photo = library().photos().add(example_photo("one.jpg"));
    const auto tag_left = [photo](Library& l) {
        TagWishes wishes;
        wishes.angle = Angle::left;
        tag(l, std::array{photo}, wishes);
    };
    EXPECT_TRUE(open.session.change_records(rename("Mira Vale")));
    EXPECT_TRUE(open.session.change_photos(tag_left));
    EXPECT_TRUE(open.session.change_records(rename("Mira V.")));

    open.session.undo();
    EXPECT_EQ(her_name(), "Mira Vale");
    EXPECT_EQ(library().photos().find(photo)->tags.angle, Angle::left);
    open.session.undo();
    EXPECT_EQ(library().photos().find(photo)->tags.angle, std::nullopt);
    open.session.undo();
    EXPECT_EQ(her_name(), "Mira Okonjo-Lindqvist");

    open.session.redo();
    open.session.redo();
    EXPECT_EQ(her_name(), "Mira Vale");
    EXPECT_EQ(library().photos().find(photo)->tags.angle, Angle::left);
    EXPECT_GE(changed.size(), 8);
}

TEST_F(SessionTest, SaysWhatWasUndoneAndWhenThereIsNothing) {
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("There is nothing to undo."));
    open.session.change_records(rename("Mira Vale"));
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("Undone: renamed her."));
}

TEST_F(SessionTest, SaysWhatCannotBeUndoneAndGoesOnAtTheNextUndo) {
    open.session.change_records(rename("Mira Vale"));
    record_said(library(), open.example.mira, ConsentSaid::granted, Use::print);
    open.session.undo();
    EXPECT_EQ(last_said(),
              QStringLiteral("What you did last cannot be undone: recorded what Mira Vale allows. "
                             "Undo again takes back what was before it."));
    EXPECT_EQ(her_name(), "Mira Vale");
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("Undone: renamed her."));
    EXPECT_EQ(library().consents().of(open.example.mira).size(), 1U);
}

TEST_F(SessionTest, PromisesNothingBeforeWhatCannotBeUndoneWhereThereIsNothing) {
    record_said(library(), open.example.mira, ConsentSaid::granted, Use::print);
    EXPECT_TRUE(open.session.can_undo());
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("What you did last cannot be undone: recorded what Mira "
                                          "Okonjo-Lindqvist allows."));
    EXPECT_FALSE(open.session.can_undo());
}

TEST_F(SessionTest, SaysHowManyPhotosOfWhatWasUndoneAreGone) {
    const PhotoId gone = library().photos().add(example_photo("one.jpg"));
    const PhotoId left = library().photos().add(example_photo("two.jpg"));
    tag(library(), std::array{gone, left}, {.angle = Angle::back});
    bin_since(gone, "2026-10-01");
    EXPECT_EQ(let_go_of_bin(library(), open.session.today()).gone, 1);
    open.session.undo();
    EXPECT_EQ(last_said(),
              QStringLiteral("Undone: tagged 2 photos back. 1 photo of it gone for good."));
}

TEST_F(SessionTest, AnEditThatFailsIsSaidAndNotUndoable) {
    EXPECT_FALSE(open.session.change_records(rename("")));
    EXPECT_FALSE(last_said().isEmpty());
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("There is nothing to undo."));
}

TEST_F(SessionTest, UndoesTagsFromBeforeTheWindowWasOpened) {
    const PhotoId photo = library().photos().add(example_photo("one.jpg"));
    Tags left;
    left.angle = Angle::left;
    library().history().apply({"tagged it", {{photo, left}}, {}});
    open.session.undo();
    EXPECT_EQ(library().photos().find(photo)->tags.angle, std::nullopt);
}

TEST_F(SessionTest, UndoesOtherRecordsFromBeforeTheWindowWasOpened) {
    open.session.change_records(rename("Mira Vale"));
    ASSERT_EQ(open.session.open(open.example.folder / "library"), QString());
    EXPECT_TRUE(open.session.can_undo());
    open.session.undo();
    EXPECT_EQ(last_said(), QStringLiteral("Undone: renamed her."));
    EXPECT_EQ(her_name(), "Mira Okonjo-Lindqvist");
    ASSERT_EQ(open.session.open(open.example.folder / "library"), QString());
    open.session.redo();
    EXPECT_EQ(her_name(), "Mira Vale");
}

TEST_F(SessionTest, SaysThatARecordWasChangedAgainSince) {
    open.session.change_records(rename("Mira Vale"));
    Client client = *library().clients().find(open.example.mira);
    client.name = "Mira V.";
    library().clients().change(client);
    open.session.undo();
    EXPECT_TRUE(last_said().startsWith(QStringLiteral("Not undone: renamed her. It was changed")));
    EXPECT_EQ(her_name(), "Mira V.");
}

TEST_F(SessionTest, LongWorkRunsOnItsOwnConnectionAndAnswersHere) {
    QThread* here = QThread::currentThread();
    std::string found;
    Job* job = open.session.start<std::string>(
        [here](Library& l, Job& working) {
            EXPECT_NE(QThread::currentThread(), here);
            working.progress({1, 2, QStringLiteral("one.jpg"), std::nullopt});
            return l.clients().all().front().name;
        },
        [&, here](std::string name) {
            EXPECT_EQ(QThread::currentThread(), here);
            found = std::move(name);
        });
    QSignalSpy progressed(job, &Job::progressed);
    QSignalSpy ended(job, &Job::ended);
    ASSERT_TRUE(ended.wait());
    EXPECT_EQ(found, "Mira Okonjo-Lindqvist");
    EXPECT_EQ(progressed.size(), 1);
    EXPECT_GE(changed.size(), 1);
}

TEST_F(SessionTest, WhatHasLainInTheBinFor30DaysGoesWhenTheLibraryIsOpened) {
    const PhotoId long_ago = library().photos().add(example_photo("one.jpg"));
    const PhotoId lately = library().photos().add(example_photo("two.jpg"));
    bin_since(long_ago, "2026-10-08");
    bin_since(lately, "2026-10-09");
    ASSERT_EQ(open.session.open(open.example.folder / "library"), QString());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !open.session.work(); }));
    ASSERT_EQ(library().bin().all().size(), 1U);
    EXPECT_EQ(library().bin().all().front().photo.id, lately);
    EXPECT_FALSE(library().photos().find_also_in_bin(long_ago));
    bool told = false;
    for (const auto& each : said) {
        told =
            told || each.front().toString() == QStringLiteral("1 photo of the bin gone for good.");
    }
    EXPECT_TRUE(told);
}

TEST_F(SessionTest, LongWorkThatFailsIsSaid) {
    Job* job = open.session.start<int>(
        [](Library&, Job&) -> int { throw StoreError("The card was pulled."); }, [](int) {});
    QSignalSpy ended(job, &Job::ended);
    ASSERT_TRUE(ended.wait());
    EXPECT_EQ(last_said(), QStringLiteral("The card was pulled."));
}

TEST_F(SessionTest, LongWorkPausesGoesOnAndStops) {
    std::atomic<int> rounds = 0;
    Job* job = open.session.start<int>(
        [&rounds](Library&, Job& working) {
            while (!working.stop_token().stop_requested()) {
                ++rounds;
                working.progress({rounds, 0, {}, std::nullopt});
            }
            return rounds.load();
        },
        [](int) {});
    QSignalSpy ended(job, &Job::ended);
    ASSERT_TRUE(QTest::qWaitFor([&] { return rounds > 3; }));
    job->pause(true);
    QTest::qWait(20);
    const int paused_at = rounds;
    QTest::qWait(20);
    EXPECT_EQ(rounds, paused_at);
    job->pause(false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return rounds > paused_at; }));
    job->stop();
    EXPECT_TRUE(ended.wait());
}

}  // namespace
}  // namespace quarterturn
