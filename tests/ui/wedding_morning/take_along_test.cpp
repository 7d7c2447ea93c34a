#include "tests/support/command.h"
#include "tests/support/consent_said.h"
#include "tests/ui/wedding_morning/board_fixture.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

class TakeAlongTest : public BoardTest {
  protected:
    TakeAlong& ways() { return *board().findChild<TakeAlong*>(); }
    TakenFrom mira() {
        Library& library = open.session.library();
        return {*library.weddings().find(open.example.wedding),
                *library.clients().find(open.example.mira), open.example.look};
    }
    std::string text_of_pdf(const Path& file) {
        return output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() +
                         " -");
    }

    Path file(const char* name) { return open.example.folder / name; }
};

TEST_F(TakeAlongTest, TheBoardIsSavedForThePaperAskedFor) {
    ways().save_board(mira(), Paper::a3, file("board.pdf"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Saved:")); }));
    const std::string text = text_of_pdf(file("board.pdf"));
    for (const char* words : {"A3", "Mira Okonjo-Lindqvist", "Ada Lindqvist", "Roll the twist."}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(TakeAlongTest, APhonePageOfOneClientHoldsHersAloneAndSaysWhomItShows) {
    ways().save_phone_page(open.example.wedding, open.example.mira, file("mira.html"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("only as she has allowed")); }));
    const std::string html = output_of("cat " + file("mira.html").string());
    EXPECT_NE(html.find("Roll the twist."), std::string::npos);
    EXPECT_EQ(html.find("Ada Lindqvist"), std::string::npos);
    EXPECT_EQ(html.find("Old Granary"), std::string::npos) << "the place is nobody's business";
}

TEST_F(TakeAlongTest, APageWithoutAPhotoIsNotSaidToShowAPerson) {
    ways().save_phone_page(open.example.wedding, tilda, file("tilda.html"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Saved:")); }));
    EXPECT_FALSE(says(QStringLiteral("It shows a person")));
}

TEST_F(TakeAlongTest, TheTakeDownCardSaysWhatTheRecipeLacks) {
    ways().save_card(open.example.look, file("card.pdf"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Saved:")); }));
    EXPECT_TRUE(says(QStringLiteral("recipe")));
    EXPECT_NE(text_of_pdf(file("card.pdf")).find("Mira Okonjo-Lindqvist"), std::string::npos);
}

TEST_F(TakeAlongTest, WhatMayNotBeKeptIsTakenAlongNowhere) {
    record_said(open.session.library(), open.example.mira, ConsentSaid::declined, Use::own_record);
    const auto refused = [this](const char* name) {
        const bool said =
            QTest::qWaitFor([&] { return says(QStringLiteral("may not be kept even for")); });
        seen<Notice>().front()->say({});
        return said && !std::filesystem::exists(file(name));
    };
    ways().save_board(mira(), Paper::a4, file("board.pdf"));
    EXPECT_TRUE(refused("board.pdf"));
    ways().save_phone_page(open.example.wedding, std::nullopt, file("board.html"));
    EXPECT_TRUE(refused("board.html"));
    ways().save_card(open.example.look, file("card.pdf"));
    EXPECT_TRUE(refused("card.pdf"));
}

TEST_F(TakeAlongTest, SaysWhenThereIsNoLookToTakeDown) {
    TakenFrom tilda_alone = mira();
    tilda_alone.look.reset();
    ways().take(TakenAlong::take_down_card, tilda_alone);
    EXPECT_TRUE(says(QStringLiteral("nothing to take down")));
}

}  // namespace
}  // namespace quarterturn
