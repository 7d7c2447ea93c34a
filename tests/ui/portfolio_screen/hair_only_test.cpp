#include <QComboBox>

#include "indexer/store/hair_only_table.h"
#include "tests/ui/portfolio_screen/portfolio_fixture.h"
#include "ui/portfolio_screen/part_view.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

// Mira allows her hair alone for social media; the left photo may show her face.
struct HairOnlyScreen : PortfolioScreenTest {
    HairOnlyScreen() {
        ConsentEntry entry;
        entry.client = example.mira;
        entry.said = ConsentSaid::granted;
        entry.shown = ShownAs::hair_only;
        entry.said_on = parse_date("2026-11-01").value();
        entry.recorded_at = at("2026-11-01T08:00");
        record_consent(library(), entry, std::array{Use::social_media});
        library().credits().set(std::array{left}, Credit{});
        auto* uses = field<QComboBox>("For which use");
        uses->setCurrentIndex(static_cast<int>(Use::social_media));
        emit uses->activated(uses->currentIndex());
        wait();
        look_at(left);
    }

    PartView& view() { return *screen.findChild<PartView*>(); }
    std::optional<HairOnly> confirmed() { return HairOnlyTable(library().database()).of(left); }
    void draw(double from_x, double from_y, double to_x, double to_y) {
        const auto place = [this](double x, double y) {
            const QSizeF size = QSizeF(300, 400).scaled(QSizeF(view().size()), Qt::KeepAspectRatio);
            return QPointF((view().width() - size.width()) / 2 + x * size.width(),
                           (view().height() - size.height()) / 2 + y * size.height())
                .toPoint();
        };
        QTest::mousePress(&view(), Qt::LeftButton, {}, place(from_x, from_y));
        QTest::mouseMove(&view(), place(to_x, to_y));
        QTest::mouseRelease(&view(), Qt::LeftButton, {}, place(to_x, to_y));
    }
};

TEST_F(HairOnlyScreen, APartThatSheDrewCountsOnceSheHasLookedAtIt) {
    EXPECT_TRUE(says("It may not be shown"));
    press("Hair only…");
    EXPECT_TRUE(says("The search for faces can miss one"));
    press("Draw a part");
    EXPECT_FALSE(button("I looked: it shows no face")->isEnabled());
    draw(0.1, 0.1, 0.6, 0.5);
    press("Make the picture");
    EXPECT_TRUE(says("The search found no face in this picture."));
    EXPECT_FALSE(confirmed());  // made, and not looked at yet
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press("I looked: it shows no face");
    ASSERT_TRUE(confirmed());
    EXPECT_EQ(confirmed()->way, HairOnlyWay::crop);
    EXPECT_NEAR(confirmed()->x, 0.1, 0.01);
    EXPECT_NEAR(confirmed()->y, 0.1, 0.01);
    EXPECT_NEAR(confirmed()->width, 0.5, 0.01);
    EXPECT_NEAR(confirmed()->height, 0.4, 0.01);
    EXPECT_TRUE(says("The picture that leaves her face out may be shown"));
    press("Hair only…");
    press("It counts no longer");
    EXPECT_FALSE(confirmed());
    press("Back to choosing");
    EXPECT_TRUE(says("It may not be shown"));
}

TEST_F(HairOnlyScreen, ThePartIsMovedAndSizedByTheKeysAndCovered) {
    press("Hair only…");
    press("Draw a part");
    EXPECT_TRUE(view().hasFocus());
    const QRectF before = view().part();
    QTest::keyClick(&view(), Qt::Key_Down);
    EXPECT_GT(view().part().y(), before.y());
    QTest::keyClick(&view(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_LT(view().part().width(), before.width());
    for (int i = 0; i < 100; ++i) QTest::keyClick(&view(), Qt::Key_Down);
    EXPECT_LE(view().part().bottom(), 1.0001);
    field<QComboBox>("What becomes of the part")->setCurrentIndex(1);
    press("Make the picture");
    press("I looked: it shows no face");
    ASSERT_TRUE(confirmed());
    EXPECT_EQ(confirmed()->way, HairOnlyWay::cover);
}

TEST_F(HairOnlyScreen, IsRefusedInWordsWhereHerOwnRecordIs) {
    ConsentEntry no;
    no.client = example.mira;
    no.use = Use::own_record;
    no.said = ConsentSaid::declined;
    no.said_on = parse_date("2026-11-01").value();
    no.recorded_at = at("2026-11-01T08:00");
    record_consent(library(), no, std::array{Use::own_record});
    press("Hair only…");
    EXPECT_TRUE(says("left.jpg: Mira Okonjo-Lindqvist does not want"));
    press("Draw a part");
    EXPECT_FALSE(button("Make the picture")->isEnabled());
}

TEST_F(HairOnlyScreen, IsOfferedOnlyWhereAFaceIsInTheWay) {
    EXPECT_NE(button("Hair only…"), nullptr);
    look_at(ada_left);  // she was not asked at all
    EXPECT_EQ(button("Hair only…"), nullptr);
}

}  // namespace
}  // namespace quarterturn
