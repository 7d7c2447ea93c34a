#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLineEdit>
#include <QMimeData>

#include "tests/ui/portfolio_screen/portfolio_fixture.h"
#include "ui/portfolio_screen/export_part.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

struct SendingOut : PortfolioScreenTest {
    SendingOut() {
        for (const PhotoId photo : {back, ada_left}) choose(photo);
        press("Sending out");
    }
    void send() {
        screen.findChild<ExportPart*>()->export_to(out);
        wait();
    }

    Path out = example.folder / "out";
};

TEST_F(SendingOut, OnlyWhatMayGoIsWritten) {
    EXPECT_TRUE(says("2 photos to be shown on a website."));
    EXPECT_TRUE(says("no legal advice"));
    send();
    EXPECT_TRUE(says("Written: 1 of 2"));
    EXPECT_TRUE(says("back.jpg was written"));
    EXPECT_TRUE(says("ada.jpg stays here"));
    EXPECT_TRUE(says("Ada Vale"));
    ASSERT_EQ(files_in(out).size(), 1U);
    const auto ledger = library().ledger().all();
    ASSERT_EQ(ledger.size(), 1U);
    EXPECT_EQ(ledger[0].photo, back);
    EXPECT_EQ(Path(ledger[0].file), files_in(out)[0]);
    EXPECT_EQ(files_in(out)[0].filename().string().find("Mira"), std::string::npos);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(SendingOut, InTheShapeAndSizeThatSheChose) {
    field<QComboBox>("Shape")->setCurrentIndex(1);
    press("My business at the foot");
    send();
    const auto bytes = read_bytes(files_in(out).at(0));
    const cv::Mat picture = decoder->decode({bytes, 1, 0}).bgr;
    EXPECT_EQ(picture.cols, picture.rows);
}

TEST_F(SendingOut, TheUsualSizeFollowsTheUse) {
    EXPECT_EQ(field<QComboBox>("Long edge")->currentData().toInt(), 2160);
    auto* uses = field<QComboBox>("For which use");
    uses->setCurrentIndex(static_cast<int>(Use::print));
    emit uses->activated(uses->currentIndex());
    wait();
    EXPECT_EQ(field<QComboBox>("Long edge")->currentData().toInt(), 0);
}

TEST_F(SendingOut, APageForTheWebsiteHoldsOnlyWhatMayGo) {
    EXPECT_NE(button("Save as a page for my website…"), nullptr);
    screen.findChild<ExportPart*>()->write_page(out);
    wait();
    EXPECT_TRUE(says("The page was written: "));
    EXPECT_TRUE(says("back.jpg was written"));
    EXPECT_TRUE(says("ada.jpg stays here"));
    const auto bytes = read_bytes(out / "index.html");
    const QByteArray page(reinterpret_cast<const char*>(bytes.data()), qsizetype(bytes.size()));
    EXPECT_TRUE(page.contains("Website"));  // the selection's name
    for (const Exported& exported : library().ledger().all()) EXPECT_EQ(exported.photo, back);
    EXPECT_FALSE(library().ledger().all().empty());
}

TEST_F(SendingOut, NoPageIsWrittenOfPhotosThatMayNotGo) {
    press("Choosing");
    choose(back);  // out of it again
    press("Sending out");
    screen.findChild<ExportPart*>()->write_page(out);
    wait();
    EXPECT_TRUE(says("No page was written"));
    EXPECT_FALSE(std::filesystem::exists(out / "index.html"));
    EXPECT_TRUE(library().ledger().all().empty());
}

TEST_F(SendingOut, APageIsOfferedForAWebsiteAlone) {
    auto* uses = field<QComboBox>("For which use");
    uses->setCurrentIndex(static_cast<int>(Use::print));
    emit uses->activated(uses->currentIndex());
    wait();
    EXPECT_EQ(button("Save as a page for my website…"), nullptr);
}

TEST_F(SendingOut, AFolderInTheLibraryIsRefused) {
    screen.findChild<ExportPart*>()->export_to(library().folder() / "out");
    wait();
    EXPECT_TRUE(says("lies in the library"));
    EXPECT_TRUE(library().ledger().all().empty());
}

TEST_F(SendingOut, WhatWentOutIsListedWithWhereItWasPut) {
    send();
    press("What went out");
    EXPECT_TRUE(says("Website, "));
    EXPECT_TRUE(says("back.jpg"));
    EXPECT_TRUE(says("Ends within 60 days"));
    EXPECT_TRUE(says("until 2026-12-01"));
    auto* place = field<QLineEdit>("Where did you put export 1?");
    place->setFocus();
    QTest::keyClicks(place, "gallery, third page");
    QTest::keyClick(place, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_TRUE(says("Put at: gallery, third page"));
    EXPECT_FALSE(says("To take down"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(SendingOut, WhatWasWithdrawnIsTakenDown) {
    send();
    ConsentEntry entry;
    entry.client = example.mira;
    entry.said = ConsentSaid::withdrawn;
    entry.said_on = parse_date("2026-11-07").value();
    entry.recorded_at = at("2026-11-07T08:00");
    record_consent(library(), entry, std::array{Use::website});
    screen.arrive({.moment = Moment::portfolio, .to_take_down = true});
    screen.refresh();
    EXPECT_TRUE(says("To take down")) << "the list itself, wherever she comes from";
    press("back.jpg was taken down");
    EXPECT_FALSE(says("To take down"));
    EXPECT_TRUE(says("Taken down on"));
    press("Sending out");
    send();
    EXPECT_TRUE(says("Written: 0 of 2"));
    EXPECT_EQ(files_in(out).size(), 1U);  // the one from before
}

// Nothing of a photo leaves by the clipboard or by a drag: what is carried within the window are
// numbers.
TEST_F(PortfolioScreenTest, NoPictureLeavesByTheClipboardOrADrag) {
    choose(ada_left);
    QGuiApplication::clipboard()->clear();
    look_at(ada_left);
    QTest::keySequence(&shelves(), QKeySequence::Copy);
    strip().setFocus();
    strip().setCurrentRow(0);
    QTest::keySequence(&strip(), QKeySequence::Copy);
    const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
    EXPECT_FALSE(copied && (copied->hasImage() || copied->hasUrls()));
    EXPECT_FALSE(shelves().dragEnabled());
    EXPECT_FALSE(strip().dragEnabled());
    const std::unique_ptr<QMimeData> carried(carry_photos({ada_left}));
    EXPECT_EQ(carried->formats(), QStringList{"application/x-quarterturn-photos"});
    EXPECT_EQ(carried_photos(*carried), std::vector{ada_left});
}

TEST(PortfolioScreen, TeachesWhereThereIsNoPhoto) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    PortfolioScreen screen(session);
    screen.refresh();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.work() == nullptr; }, 20000));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
