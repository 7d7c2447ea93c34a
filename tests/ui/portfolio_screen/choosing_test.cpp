#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include "tests/ui/portfolio_screen/portfolio_fixture.h"
#include "ui/portfolio_screen/balance_bars.h"

namespace quarterturn {
namespace {

TEST_F(PortfolioScreenTest, ThoseThatMayGoComeFirst) {
    const auto& model = *static_cast<ShownCandidates*>(shelves().model());
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.ready(), 1);
    EXPECT_EQ(model.at(0).photo.id, back);
    EXPECT_TRUE(
        model.index(position_of(ada_left)).data(Qt::DisplayRole).toString().contains("Ada Vale"));
    for (int row = 0; row < model.rowCount(); ++row) {
        EXPECT_TRUE(
            model.index(row).data(Qt::DisplayRole).toString().contains("Not signed off yet"));
    }
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PortfolioScreenTest, SaysWhatIsMissingAndLeadsToTheOneToAsk) {
    look_at(back);
    EXPECT_TRUE(says("It may be shown on a website."));
    look_at(ada_left);
    EXPECT_TRUE(says("It may not be shown on a website yet:"));
    press("Ask Ada Vale about website");
    ASSERT_TRUE(went_to);
    EXPECT_EQ(went_to->moment, Moment::consent);
    EXPECT_EQ(went_to->use, Use::website);
    EXPECT_EQ(library().clients().find(*went_to->client)->name, "Ada Vale");
}

TEST_F(PortfolioScreenTest, AnotherUseIsJudgedAnew) {
    auto* uses = field<QComboBox>("For which use");
    uses->setCurrentIndex(static_cast<int>(Use::competition));
    emit uses->activated(uses->currentIndex());
    wait();
    EXPECT_EQ(static_cast<ShownCandidates*>(shelves().model())->ready(), 0);
}

TEST_F(PortfolioScreenTest, HerOwnPhotoIsClearedByAWord) {
    look_at(left);
    EXPECT_TRUE(says("It may not be shown"));
    field<QComboBox>("Whose photo it is")->setCurrentIndex(1);
    press("Record whose it is");
    EXPECT_EQ(library().credits().of(left), Credit{});
    EXPECT_TRUE(says("It may be shown on a website."));
    EXPECT_EQ(static_cast<ShownCandidates*>(shelves().model())->ready(), 2);
    session.undo();
    wait();
    EXPECT_EQ(library().credits().of(left), std::nullopt);
    EXPECT_EQ(field<QComboBox>("Whose photo it is")->currentIndex(), 0);
    EXPECT_EQ(static_cast<ShownCandidates*>(shelves().model())->ready(), 1);
}

TEST_F(PortfolioScreenTest, APhotographersLicenceIsRecorded) {
    look_at(left);
    field<QComboBox>("Whose photo it is")->setCurrentIndex(2);
    press("Record whose it is");
    EXPECT_EQ(library().credits().of(left), std::nullopt);  // without a name
    EXPECT_TRUE(says("photographer's name"));
    field<QLineEdit>("Name of the photographer")->setText("Wren Aldous");
    press("Website");
    press("Licence ends");
    field<QComboBox>("Which credit line is wanted")->setCurrentIndex(2);
    field<QLineEdit>("The credit line")->setText("Photo: Wren Aldous");
    press("Record whose it is");
    const Credit licensed{Whose::photographer,
                          "Wren Aldous",
                          {Use::website},
                          parse_date("2028-11-07"),
                          "Photo: Wren Aldous"};
    EXPECT_EQ(library().credits().of(left), licensed);
    EXPECT_TRUE(says("It may be shown on a website."));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PortfolioScreenTest, AnotherClientWhoIsInThePhotoHasToAllowItToo) {
    look_at(back);
    EXPECT_TRUE(says("It may be shown on a website."));
    press("Another client is in it…");
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press("Ada Vale is seen in the photo");
    EXPECT_TRUE(says("Ada Vale was not asked"));
    press("Ada Vale is not in it");
    EXPECT_TRUE(says("It may be shown on a website."));
    session.undo();
    wait();
    EXPECT_TRUE(says("It may not be shown on a website yet:"));
}

TEST_F(PortfolioScreenTest, SomebodyElsesPhotoNeverGoes) {
    look_at(back);
    field<QComboBox>("Whose photo it is")->setCurrentIndex(3);
    press("Record whose it is");
    EXPECT_TRUE(says("It may not be shown"));
}

TEST_F(PortfolioScreenTest, AStrangerInThePhotoKeepsItHere) {
    look_at(back);
    EXPECT_TRUE(says("It shows Mira Okonjo-Lindqvist."));
    press("Somebody who is no client");
    EXPECT_TRUE(library().credits().seen(back).strangers);
    EXPECT_TRUE(says("It may not be shown"));
    session.undo();
    wait();
    EXPECT_FALSE(library().credits().seen(back).strangers);
    EXPECT_TRUE(says("It may be shown"));
}

TEST_F(PortfolioScreenTest, SheSaysWhetherAFaceShows) {
    look_at(back);
    auto* face = field<QComboBox>("Whether a face shows");
    face->setCurrentIndex(1);
    emit face->activated(1);
    EXPECT_EQ(library().credits().seen(back).face, true);
}

TEST_F(PortfolioScreenTest, ASelectionIsMadeNamedAndForgotten) {
    EXPECT_TRUE(says("Nothing is chosen yet."));
    choose(back);
    EXPECT_EQ(kept("Website"), std::vector{back});
    EXPECT_TRUE(says("1 photo"));
    look_at(left);
    press("Put into the selection");
    EXPECT_EQ(kept("Website"), (std::vector{back, left}));
    EXPECT_NE(button("Take out of the selection"), nullptr);
    auto* name = field<QLineEdit>("Name of the selection");
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, "Spring page");
    QTest::keyClick(name, Qt::Key_Return);
    wait();
    EXPECT_EQ(kept("Spring page"), (std::vector{back, left}));
    EXPECT_EQ(library().selections().all().size(), 1U);
    press("Forget it");
    EXPECT_TRUE(library().selections().all().empty());
    session.undo();
    wait();
    EXPECT_EQ(kept("Spring page"), (std::vector{back, left}));
}

struct InOrder : PortfolioScreenTest {
    InOrder() {
        for (const PhotoId photo : {back, left, ada_left}) choose(photo);
    }
    QPoint middle(int row) { return strip().visualItemRect(strip().item(row)).center(); }
};

TEST_F(InOrder, DraggingMovesAPhoto) {
    QWidget* area = strip().viewport();
    QTest::mousePress(area, Qt::LeftButton, {}, middle(2));
    QTest::mouseMove(area, middle(1));
    QTest::mouseMove(area, middle(0));
    QTest::mouseRelease(area, Qt::LeftButton, {}, middle(0));
    wait();
    EXPECT_EQ(kept("Website"), (std::vector{ada_left, back, left}));
    session.undo();
    wait();
    EXPECT_EQ(kept("Website"), (std::vector{back, left, ada_left}));
    EXPECT_EQ(strip().order(), (std::vector{back, left, ada_left}));
}

TEST_F(InOrder, KeysMoveAPhotoAndTakeItOut) {
    strip().setFocus();
    strip().setCurrentRow(0);
    QTest::keyClick(&strip(), Qt::Key_Right, Qt::ControlModifier);
    wait();
    EXPECT_EQ(kept("Website"), (std::vector{left, back, ada_left}));
    EXPECT_EQ(strip().currentRow(), 1);  // it keeps the keyboard as it moves
    QTest::keyClick(&strip(), Qt::Key_Delete);
    wait();
    EXPECT_EQ(kept("Website"), (std::vector{left, ada_left}));
}

TEST_F(InOrder, TheBarsSayWhatIsShownOftenAndWhatNever) {
    QStringList said;
    for (auto* bars : screen.findChildren<BalanceBars*>()) {
        for (auto* child : bars->findChildren<QWidget*>()) said << child->accessibleName();
    }
    const QString families = said.join(QStringLiteral("; "));
    EXPECT_TRUE(families.contains("low bun 2")) << families.toStdString();
    EXPECT_TRUE(families.contains("waves 0")) << families.toStdString();
}

TEST_F(InOrder, HasNoProblems) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
