#include <QLineEdit>
#include <QTest>
#include <fstream>

#include "indexer/store/erasure_table.h"
#include "tests/ui/client_record/client_record_fixture.h"

namespace quarterturn {
namespace {

struct Erasing : ClientRecordScreenTest {
    Erasing() {
        press("Erase her…");
        wait_for_work();
    }
    void type(const char* name) {
        auto* again = field<QLineEdit>("Her name, typed again");
        again->setText(QString());
        QTest::keyClicks(again, QString::fromUtf8(name));
        QTest::keyClick(again, Qt::Key_Return);
        wait_for_work();
    }
};

TEST_F(Erasing, SaysWhatGoesAndWhatMayStillHoldHer) {
    EXPECT_TRUE(says("To be erased: Mira Okonjo-Lindqvist, with 1 look"));
    EXPECT_TRUE(says("8 photos"));
    EXPECT_TRUE(says("Other copies, such as on other disks"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(ClientRecordScreenTest, SaysBeforehandWhichFilesWithoutARecordMayStayOfWhatIsErased) {
    const Path stray = session.library().folder() / "photos" / "moved by hand.jpg";
    std::ofstream(stray) << "another photo";
    press("Erase her…");
    EXPECT_TRUE(says("Looking through the library"));
    wait_for_work();
    EXPECT_TRUE(says(QString::fromStdString(stray.string()) + " is in no record"));
    EXPECT_FALSE(says("Looking through the library"));
    press("Leave as it was");
    std::filesystem::remove(stray);
    press("Erase her…");
    wait_for_work();
    EXPECT_FALSE(says(QString::fromStdString(stray.string())));
}

TEST_F(ClientRecordScreenTest, OfManyFilesTheFirstAreNamedAndTheNameFieldIsInSight) {
    for (int i = 0; i < 40; ++i) {
        std::ofstream(session.library().folder() / "photos" / (std::to_string(i) + ".jpg")) << i;
    }
    screen.resize(1024, 640);
    press("Erase her…");
    wait_for_work();
    EXPECT_TRUE(says("And 32 more like these."));
    EXPECT_FALSE(field<QLineEdit>("Her name, typed again")->visibleRegion().isEmpty());
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
    wait_for_work();
    EXPECT_TRUE(says("All else of hers stays."));
    auto* again = field<QLineEdit>("The look's name, typed again");
    QTest::keyClicks(again, QString::fromStdString(look.name));
    QTest::keyClick(again, Qt::Key_Return);
    wait_for_work();
    EXPECT_FALSE(session.library().looks().find(look.id));
    EXPECT_TRUE(session.library().clients().find(whole.mira));
    EXPECT_TRUE(says("No look is planned for her."));
}

TEST_F(ClientRecordScreenTest, PhotosOfOthersThatShowHerGoOnlyWhenSheSaysSo) {
    const ClientId ada = session.library().clients().add(client_called("Ada Vale"));
    whole.tag(whole.photos[0], [ada](Tags& tags) { tags.shown = {ada}; });
    screen.arrive({.moment = Moment::client_record, .client = ada});
    show();
    press("Erase her…");
    wait_for_work();
    EXPECT_TRUE(says("1 photo of other clients' looks or sittings shows her as well, and stays"));
    press("Erase the photos of others that show her as well");
    wait_for_work();
    EXPECT_TRUE(says("1 of the photos shows other clients too"));
}

}  // namespace
}  // namespace quarterturn
