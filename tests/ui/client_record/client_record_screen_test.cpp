// pdfinfo and pdftotext are Poppler's.

#include "ui/client_record/client_record_screen.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "indexer/store/erasure_table.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/support/command.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

class ClientRecordScreenTest : public testing::Test, protected AsksScreen {
  protected:
    ClientRecordScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        QObject::connect(&session, &Session::asked_for, &screen, [this](const Place& place) {
            went_to = place;
            if (place.moment != Moment::client_record) return;
            screen.arrive(place);
            screen.refresh();
        });
        screen.resize(1280, 800);
        screen.arrive({.moment = Moment::client_record, .client = whole.mira});
        show();
    }

    QWidget& asked() override { return screen; }

    void show() {
        screen.refresh();
        show_active(screen);
    }

    bool wait_for_saved() {
        return QTest::qWaitFor(
            [this] { return screen.findChild<Notice*>()->said().startsWith("Saved:"); });
    }

    WholeLook whole;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T13:30:00"); }};
    const QString problem = session.open(whole.folder / "library");
    ClientRecordScreen screen{session};
    std::optional<Place> went_to;
};

TEST_F(ClientRecordScreenTest, ShowsAllOfHers) {
    for (const char* words :
         {"Mira Okonjo-Lindqvist", "The Old Granary", "In the party: bride",
          "Trial, 7 November 2026, 10:00 to 12:00", "No consent recorded.", "low twisted bun",
          "Not signed off.", "Recipe, revision 1, saved 7 November 2026", "twist into a low bun",
          "8 photos", "Private data"}) {
        EXPECT_TRUE(says(QString::fromUtf8(words))) << words;
    }
    EXPECT_EQ(screen.findChildren<PhotoTile*>().size(), 8);
}

// Sentences that were painted with less height than they need.
class SqueezedWords : public QObject {
  public:
    SqueezedWords() { qApp->installEventFilter(this); }
    QStringList found;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* label = qobject_cast<QLabel*>(watched);
        if (label && event->type() == QEvent::Paint && label->hasHeightForWidth() &&
            label->heightForWidth(label->width()) > label->height()) {
            found << label->text();
        }
        return false;
    }
};

TEST_F(ClientRecordScreenTest, IsNeverPaintedSqueezed) {
    const ClientId ada = session.library().clients().add(client_called("Ada Lindqvist"));
    session.go_to({.moment = Moment::client_record, .client = ada});
    show();
    const SqueezedWords squeezed;
    session.go_to({.moment = Moment::client_record, .client = whole.mira});
    show();
    QApplication::processEvents();
    ASSERT_TRUE(says(QStringLiteral("twist into a low bun")));
    EXPECT_EQ(squeezed.found, QStringList());
}

TEST_F(ClientRecordScreenTest, FactsStandOneBelowTheOtherInANarrowWindow) {
    const auto card_of = [&](const QString& heading) -> QRect {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->text() == heading) return label->parentWidget()->geometry();
        }
        return {};
    };
    EXPECT_EQ(card_of(QStringLiteral("Weddings")).top(), card_of(QStringLiteral("Sittings")).top());
    screen.resize(600, 800);
    show();
    EXPECT_LE(card_of(QStringLiteral("Weddings")).bottom(),
              card_of(QStringLiteral("Sittings")).top());
    EXPECT_EQ(wider_than_their_pages(screen), QStringList());
}

TEST_F(ClientRecordScreenTest, TellsWhatEachRevisionChangedAndWhatIsNotSavedYet) {
    Recipe recipe = whole_recipe();
    recipe.parting = "right";
    whole.library.recipes().save(whole.look, recipe, at("2026-11-08T09:00"));
    recipe.parting = "middle";
    whole.library.recipes().keep_draft(whole.look, recipe, at("2026-11-09T09:00"));
    show();
    EXPECT_TRUE(says(QStringLiteral("Changed by revision 2, saved 8 November 2026, 09:00")));
    EXPECT_TRUE(says(QStringLiteral("Parting. Was: left. Is: right")));
    EXPECT_TRUE(says(QStringLiteral("Written since, not saved yet")));
    EXPECT_TRUE(says(QStringLiteral("Parting. Was: right. Is: middle")));
}

TEST_F(ClientRecordScreenTest, FindsAnotherClientByAnyPartOfHerName) {
    session.library().clients().add(client_called("Ανθή Λευκοπέτρου"));
    session.library().clients().add(client_called("Ysolde Vale"));
    show();
    auto* words = screen.findChild<QLineEdit*>();
    words->setFocus();
    QTest::keyClicks(words, QStringLiteral("vale"));
    show_active(screen);
    EXPECT_NE(button(QStringLiteral("Ysolde Vale")), nullptr);
    EXPECT_EQ(button(QStringLiteral("Ανθή Λευκοπέτρου")), nullptr);
    words->setText(QStringLiteral("ΛΕΥΚΟ"));
    show_active(screen);
    auto* name = button(QStringLiteral("Ανθή Λευκοπέτρου"));
    ASSERT_NE(name, nullptr);
    name->setFocus();
    QTest::keyClick(name, Qt::Key_Return);
    show_active(screen);
    EXPECT_FALSE(says(QStringLiteral("The Old Granary")));
    EXPECT_TRUE(says(QStringLiteral("No sitting is recorded.")));
    EXPECT_TRUE(name->hasFocus());
    words->setText(QStringLiteral("nobody at all"));
    EXPECT_TRUE(says(QStringLiteral("Nobody of this name is in the library.")));
}

TEST_F(ClientRecordScreenTest, APhotoLeadsRoundTheHead) {
    QTest::keyClick(screen.findChildren<PhotoTile*>().front(), Qt::Key_Space);
    ASSERT_TRUE(went_to);
    EXPECT_EQ(went_to->moment, Moment::round_the_head);
    EXPECT_EQ(went_to->look, whole.look);
    EXPECT_TRUE(went_to->photo);
}

TEST_F(ClientRecordScreenTest, LeadsToWhatSheAllows) {
    button(QStringLiteral("What she allows"))->click();
    ASSERT_TRUE(went_to);
    EXPECT_EQ(went_to->moment, Moment::consent);
    EXPECT_EQ(went_to->client, whole.mira);
}

TEST_F(ClientRecordScreenTest, SavesThePdf) {
    const Path file = whole.folder / "mira.pdf";
    screen.save_pdf(file);
    ASSERT_TRUE(wait_for_saved());
    const std::string text = output_of("pdftotext -layout " + file.string() + " -");
    for (const char* words : {"Mira Okonjo-Lindqvist", "No consent recorded.", "Private data"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(ClientRecordScreenTest, SavesAllOfItInAFolderAndSaysWhenItIsThereAlready) {
    const Path folder = whole.folder / "mira";
    screen.save_everything(folder);
    ASSERT_TRUE(wait_for_saved());
    for (const char* name : {"record.pdf", "client.json", "photos.csv", "recipes.csv"}) {
        EXPECT_TRUE(std::filesystem::exists(folder / "data" / name)) << name;
    }
    screen.save_everything(folder);
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return screen.findChild<Notice*>()->said().contains("is there already"); }));
}

TEST_F(ClientRecordScreenTest, SaysWhichPhotosTheFolderLacksAndWhy) {
    whole.library.credits().set_seen(whole.photos[0], {{}, true, false});
    screen.save_everything(whole.folder / "mira");
    ASSERT_TRUE(wait_for_saved());
    EXPECT_TRUE(screen.findChild<Notice*>()->said().contains(
        "IMG_411.JPG shows somebody who is no client, and is not in the folder."));
}

struct Erasing : ClientRecordScreenTest {
    Erasing() { press("Erase her…"); }
    void type(const char* name) {
        auto* again = field<QLineEdit>("Her name, typed again");
        again->setText(QString());
        QTest::keyClicks(again, QString::fromUtf8(name));
        QTest::keyClick(again, Qt::Key_Return);
        ASSERT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }, 20000));
    }
};

TEST_F(Erasing, SaysWhatGoesAndWhatMayStillHoldHer) {
    EXPECT_TRUE(says("To be erased: Mira Okonjo-Lindqvist, with 1 look"));
    EXPECT_TRUE(says("8 photos"));
    EXPECT_TRUE(says("Other copies, such as on other disks"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(Erasing, AnotherNameErasesNothing) {
    type("Mira");
    EXPECT_TRUE(says("Nothing was erased"));
    EXPECT_TRUE(session.library().clients().find(whole.mira));
    press("Leave as it was");
    EXPECT_FALSE(says("To be erased"));
}

TEST_F(Erasing, HerNameTypedAgainErasesHerAndHerPhotosForGood) {
    const Path photo =
        session.library().photo_file(*session.library().photos().find(whole.photos[0]));
    const std::string name = session.library().clients().find(whole.mira)->name;
    session.change_records({"named her anew", [id = whole.mira, name](Library& l) {
                                l.clients().change({id, name, "a note on " + name});
                            }});
    type("Mira Okonjo-Lindqvist");
    EXPECT_FALSE(session.library().clients().find(whole.mira));
    EXPECT_TRUE(session.library().photos().all().empty());
    EXPECT_FALSE(std::filesystem::exists(photo));
    const auto erasures = ErasureTable(session.library().database()).all();
    ASSERT_EQ(erasures.size(), 1U);
    EXPECT_TRUE(erasures[0].finished);
    session.undo();  // brings nothing of hers back
    EXPECT_TRUE(session.library().clients().all().empty());
}

TEST_F(ClientRecordScreenTest, OneLookIsErasedByItsNameAndSheStays) {
    const Look look = session.library().looks().all().at(0);
    press("Erase the look " + QString::fromStdString(look.name) + "…");
    EXPECT_TRUE(says("All else of hers stays."));
    auto* again = field<QLineEdit>("The look's name, typed again");
    QTest::keyClicks(again, QString::fromStdString(look.name));
    QTest::keyClick(again, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }, 20000));
    EXPECT_FALSE(session.library().looks().find(look.id));
    EXPECT_TRUE(session.library().clients().find(whole.mira));
    QCoreApplication::processEvents();  // what has come is shown
    EXPECT_TRUE(says("No look is planned for her."));
}

TEST_F(ClientRecordScreenTest, PhotosOfOthersThatShowHerGoOnlyWhenSheSaysSo) {
    const ClientId ada = session.library().clients().add(client_called("Ada Vale"));
    whole.tag(whole.photos[0], [ada](Tags& tags) { tags.shown = {ada}; });
    screen.arrive({.moment = Moment::client_record, .client = ada});
    show();
    press("Erase her…");
    EXPECT_TRUE(says("1 photo of other clients' looks or sittings shows her as well, and stays"));
    press("Erase the photos of others that show her as well");
    EXPECT_TRUE(says("1 of the photos shows other clients too"));
}

TEST_F(ClientRecordScreenTest, HasNoProblemsAtAnySizeAlsoWithALongNoteAndManyClients) {
    Client mira = *session.library().clients().find(whole.mira);
    mira.note = std::string("Says so at the door: ") + std::string(60, 'a') +
                " and the rest in many words, so that it has to go on in a further line below.";
    session.library().clients().change(mira);
    for (int i = 0; i < 30; ++i) {
        session.library().clients().add(
            client_called("Client of a long name " + std::to_string(i)));
    }
    show();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(ClientRecordScreen, TeachesWhereThereIsNoClient) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    ClientRecordScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
