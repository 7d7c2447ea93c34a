// pdfinfo and pdftotext are Poppler's.

#include "ui/contact_sheet/contact_sheet_screen.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QTest>

#include "indexer/looks/consents.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/support/command.h"
#include "tests/support/consent_said.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/contact_sheet/page_view.h"
#include "ui/painter/paint.h"
#include "ui/printing/printing.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

class ContactSheetScreenTest : public testing::Test {
  protected:
    ContactSheetScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        session.open(whole.folder / "library");
        screen.resize(1280, 800);
        screen.arrive({.moment = Moment::contact_sheet, .look = whole.look});
        screen.refresh();
        show_active(screen);
        EXPECT_TRUE(wait_for_page());
    }

    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->text() == text) return found;
        }
        return nullptr;
    }

    bool wait_for_page() {
        return QTest::qWaitFor([this] { return button(QStringLiteral("Print…"))->isEnabled(); });
    }

    QComboBox* choice(const QString& name) {
        for (auto* found : screen.findChildren<QComboBox*>()) {
            if (found->accessibleName() == name) return found;
        }
        return nullptr;
    }

    void choose(const QString& name, int index) {
        choice(name)->setCurrentIndex(index);
        emit choice(name)->activated(index);
        EXPECT_TRUE(wait_for_page());
    }

    std::string saved_text() {
        const Path file = whole.folder / "sheet.pdf";
        screen.save_to(file);
        const auto* notice = screen.findChild<Notice*>();
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return notice->said().startsWith(QStringLiteral("Saved")); }));
        return output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() +
                         " -");
    }

    WholeLook whole;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T13:30:00"); }};
    ContactSheetScreen screen{session};
};

TEST_F(ContactSheetScreenTest, SavesWhatIsShownOnThePaperChosen) {
    const std::string a4 = saved_text();
    EXPECT_NE(a4.find("low twisted bun"), std::string::npos) << a4;
    EXPECT_NE(a4.find("595"), std::string::npos) << "A4 is 595 by 842 points: " << a4;
    choose(QStringLiteral("Paper"), 3);
    EXPECT_NE(saved_text().find("612"), std::string::npos) << "Letter is 612 by 792 points";
}

TEST_F(ContactSheetScreenTest, TheRowForDuringAndEveryFrameAreChoices) {
    whole.add_photo("IMG_500.JPG", {Stage::during, Angle::left});
    session.touch();
    ASSERT_TRUE(wait_for_page());
    EXPECT_EQ(saved_text().find("During"), std::string::npos);
    screen.findChild<QCheckBox*>()->click();
    ASSERT_TRUE(wait_for_page());
    EXPECT_NE(saved_text().find("During"), std::string::npos);
    choose(QStringLiteral("What it shows"), 1);
    EXPECT_FALSE(screen.findChild<QCheckBox*>()->isVisible());
}

TEST_F(ContactSheetScreenTest, AChangedTagLaysThePageOutAnew) {
    EXPECT_EQ(saved_text().find("mirrored, turned"), std::string::npos);
    whole.tag(whole.photos[0], [](Tags& tags) { tags.mirrored = true; });
    session.touch();
    ASSERT_TRUE(wait_for_page());
    EXPECT_NE(saved_text().find("mirrored, turned"), std::string::npos);
}

TEST_F(ContactSheetScreenTest, SaysThatItShowsAPersonOnlyWhereAPhotoIsOnIt) {
    const auto says_so = [this] {
        const auto labels = screen.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [](const QLabel* label) {
            return label->isVisible() &&
                   label->text().startsWith(QStringLiteral("It shows a person"));
        });
    };
    EXPECT_TRUE(says_so());
    Change untagged{"untagged", {}, {}};
    for (const Photo& photo : session.library().photos().all()) {
        untagged.tags.push_back({photo.id, {}});
    }
    session.library().history().apply(untagged);
    screen.refresh();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !says_so(); }));
    EXPECT_TRUE(wait_for_page());
}

TEST_F(ContactSheetScreenTest, SaysWhyItCouldNotSave) {
    screen.save_to(whole.folder / "not there" / "sheet.pdf");
    const auto* notice = screen.findChild<Notice*>();
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return notice->said().contains(QStringLiteral("sheet.pdf"));
    })) << notice->said().toStdString();
}

TEST_F(ContactSheetScreenTest, APrinterGetsThePageAtItsOwnSize) {
    const auto ruler = make_text_ruler();
    const Document document =
        contact_sheet(session.library(), decoder, *ruler, whole.look, {Paper::a4, false});
    const Path file = whole.folder / "printed.pdf";
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(QString::fromStdString(file.string()));
    set_paper(printer, document);
    ASSERT_TRUE(print_pages(printer, pages_to_print(document, decoder, real_file_system())));
    const std::string text =
        output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() + " -");
    EXPECT_NE(text.find("A4"), std::string::npos) << text;
    EXPECT_NE(text.find("low twisted bun"), std::string::npos) << text;
}

struct MadeForOthers : ContactSheetScreenTest {
    MadeForOthers() { choose_use(6); }
    void choose_use(int index) {
        choice("Made for")->setCurrentIndex(index);
        emit choice("Made for")->activated(index);
        EXPECT_TRUE(QTest::qWaitFor([this] { return button("Save as PDF…")->isEnabled(); }));
    }
    bool wait_until_said(const char* words) {
        const auto* notice = screen.findChild<Notice*>();
        return QTest::qWaitFor([&] { return notice->said().contains(words); });
    }
    void record(ConsentSaid said, Use use) {
        record_said(session.library(), whole.mira, said, use);
    }
    Path file = whole.folder / "for others.pdf";
};

TEST_F(MadeForOthers, LeavesOnlyWhenAllItsPhotosMayGoAndStandsInTheLedger) {
    ASSERT_EQ(choice("Made for")->currentText(), "teaching");
    EXPECT_FALSE(button("Print…")->isEnabled());
    EXPECT_FALSE(button("Save as a picture…")->isEnabled());
    screen.save_to(file);
    ASSERT_TRUE(wait_until_said("Nothing was written, since some of its photos may not go"));
    EXPECT_FALSE(std::filesystem::exists(file));
    EXPECT_TRUE(session.library().ledger().all().empty());

    record(ConsentSaid::granted, Use::teaching);
    std::vector<PhotoId> photos;
    for (const Photo& photo : session.library().photos().all()) photos.push_back(photo.id);
    session.library().credits().set(photos, Credit{});
    screen.save_to(file);
    ASSERT_TRUE(wait_until_said("Saved: "));
    EXPECT_TRUE(std::filesystem::exists(file));
    const auto ledger = session.library().ledger().all();
    ASSERT_FALSE(ledger.empty());
    for (const Exported& exported : ledger) EXPECT_EQ(exported.use, Use::teaching);
    const std::string name = shell_word(file.string());
    const std::string text = output_of("pdfinfo " + name + "; pdftotext " + name + " -");
    EXPECT_NE(text.find("low twisted bun"), std::string::npos) << text;
    for (const char* hers : {"Mira", "Okonjo", "Vale", "Granary", "November", "loves it"}) {
        EXPECT_EQ(text.find(hers), std::string::npos) << hers << " in\n" << text;
    }
}

TEST_F(MadeForOthers, IsNotSavedWhereNoPhotoStandsOnIt) {
    Look bare;
    bare.client = whole.mira;
    bare.name = "plait";
    session.choose_look(session.library().looks().add(bare));
    screen.refresh();
    ASSERT_TRUE(QTest::qWaitFor([this] { return button("Save as PDF…")->isEnabled(); }));
    screen.save_to(file);
    EXPECT_TRUE(wait_until_said("no photo would stand on it"));
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST_F(MadeForOthers, APictureOfOnePageIsRefused) {
    screen.save_to(whole.folder / "for others.png");
    EXPECT_TRUE(wait_until_said("written as .pdf"));
}

TEST_F(MadeForOthers, WhatMayNotBeKeptGoesOnNoSheetOfHerOwn) {
    record(ConsentSaid::declined, Use::own_record);
    choose_use(0);
    screen.save_to(file);
    EXPECT_TRUE(wait_until_said("may not be kept even for your own work"));
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST_F(MadeForOthers, HasNoProblemsAtAnySize) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(ContactSheetScreenTest, HasNoProblemsAtAnySize) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
