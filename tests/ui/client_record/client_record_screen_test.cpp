// pdfinfo and pdftotext are Poppler's.

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/support/command.h"
#include "tests/ui/client_record/client_record_fixture.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

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
