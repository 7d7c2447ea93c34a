// Steps of the build: said in shorthand, moved about, and with photos.

#include <QClipboard>
#include <QMimeData>
#include <QUrl>

#include "tests/ui/recipe/recipe_fixture.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

std::vector<std::string> words_of_steps(const Recipe& recipe) {
    std::vector<std::string> words;
    for (const Step& step : recipe.build) words.push_back(step.words);
    return words;
}

using Words = std::vector<std::string>;

class StepsTest : public RecipeScreenTest {
  protected:
    void say_one_six_nine() {
        show(evening);
        for (const char* words : {"one", "six", "nine"}) say_step(QString::fromUtf8(words));
    }
    // The keyboard on the heading of a step.
    void go_to_step(qsizetype place) { steps()[place]->findChild<MarkedButton*>()->setFocus(); }

    void paste_into_first_step(QMimeData* data) {
        show(whole.look);
        go_to_step(0);
        key(Qt::Key_Return);
        QGuiApplication::clipboard()->setMimeData(data);
        key(Qt::Key_V, Qt::ControlModifier);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !steps()[0]->value().photos.empty(); }));
    }
};

TEST_F(StepsTest, IsReadFromShorthandIntoFieldsThatSheCorrects) {
    show(evening);
    named(QStringLiteral("The next step"))->setFocus();
    type(QStringLiteral("25mm tongs away, 4 pins crossed, sing softly"));
    EXPECT_NE(with_text<QLabel>(QStringLiteral("Read as: ")), nullptr);
    key(Qt::Key_Return);
    ASSERT_EQ(steps().size(), 1);
    go_to_step(0);
    key(Qt::Key_Return);
    auto* count = qobject_cast<QLineEdit*>(named(QStringLiteral("pins 1, how many")));
    auto* barrel = qobject_cast<QLineEdit*>(named(QStringLiteral("step 1, Heat tool, barrel")));
    ASSERT_NE(count, nullptr);
    EXPECT_EQ(count->text(), QStringLiteral("4"));
    ASSERT_NE(barrel, nullptr);
    EXPECT_EQ(barrel->text(), QStringLiteral("25"));
    count->setFocus();
    count->selectAll();
    type(QStringLiteral("6"));
    const Recipe recipe = kept(evening);
    ASSERT_EQ(recipe.build.size(), 1U);
    const Step& step = recipe.build[0];
    EXPECT_TRUE(holds(step.words, "sing softly"));
    EXPECT_EQ(step.winding.direction, Wind::away);
    ASSERT_EQ(step.pins.size(), 1U);
    EXPECT_EQ(step.pins[0].count, 6);
    EXPECT_TRUE(step.pins[0].crossed);
}

TEST_F(StepsTest, AreMovedDoubledAndRemovedByKeys) {
    say_one_six_nine();
    go_to_step(2);
    key(Qt::Key_Up, Qt::AltModifier);
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(words_of_steps(kept(evening)), (Words{"nine", "one", "six"}));
    go_to_step(0);
    key(Qt::Key_Down, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(words_of_steps(kept(evening)), (Words{"nine", "nine", "one", "six"}));
    go_to_step(1);
    key(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_EQ(words_of_steps(draft(evening)), (Words{"nine", "one", "six"}));
    EXPECT_TRUE(steps()[1]->isAncestorOf(QApplication::focusWidget()));
    EXPECT_TRUE(
        steps()[1]->findChild<MarkedButton*>()->text().startsWith(QStringLiteral("2. one")));
}

TEST_F(StepsTest, ARemovedStepComesBackBesideWhatWasWrittenSince) {
    say_one_six_nine();
    go_to_step(1);
    key(Qt::Key_Delete, Qt::AltModifier);
    say_step(QStringLiteral("four"));
    (void)kept(evening);
    session.undo();
    EXPECT_EQ(words_of_steps(draft(evening)), (Words{"one", "six", "nine", "four"}));
    session.redo();
    EXPECT_EQ(words_of_steps(draft(evening)), (Words{"one", "nine", "four"}));
}

TEST_F(StepsTest, MinutesAddUp) {
    show(evening);
    say_step(QStringLiteral("twist, 10 min"));
    say_step(QStringLiteral("pin, 15 min"));
    part(RecipePlace::minutes).begin_writing();
    EXPECT_NE(with_text<QLabel>(QStringLiteral("25 hands-on and 0 waiting")), nullptr);
}

TEST_F(StepsTest, APhotoOfTheLookIsChosenByKeys) {
    show(whole.look);
    go_to_step(0);
    key(Qt::Key_Return);
    press(QStringLiteral("Choose photos of the look"));
    QList<PhotoTile*> tiles;
    for (auto* tile : steps()[0]->findChildren<PhotoTile*>()) {
        if (tile->isVisible()) tiles << tile;
    }
    ASSERT_EQ(tiles.size(), qsizetype(whole.photos.size()));
    const PhotoId chosen = tiles[3]->photo();
    tiles[3]->setFocus();
    key(Qt::Key_Space);
    const std::string checksum = session.library().photos().find(chosen)->file.sha256;
    EXPECT_EQ(kept(whole.look).build[0].photos, std::vector<std::string>{checksum});
    EXPECT_TRUE(tiles[3]->look().selected);
    tiles[3]->setFocus();
    key(Qt::Key_Escape);
    int shown_photos = 0;
    for (auto* tile : steps()[0]->findChildren<PhotoTile*>()) shown_photos += tile->isVisible();
    EXPECT_EQ(shown_photos, 1);
}

TEST_F(StepsTest, APastedPictureBecomesAPhotoOfTheLookAndOfTheStep) {
    QImage picture(320, 240, QImage::Format_RGB32);
    picture.fill(Qt::darkYellow);
    auto* data = new QMimeData;
    data->setImageData(picture);
    paste_into_first_step(data);
    const Recipe recipe = kept(whole.look);
    ASSERT_EQ(recipe.build[0].photos.size(), 1U);
    const auto id = session.library().photos().with_sha256(recipe.build[0].photos[0]);
    ASSERT_TRUE(id);
    const Photo photo = *session.library().photos().find(*id);
    EXPECT_EQ(photo.tags.look, whole.look);
    EXPECT_EQ(photo.file.width, 320);
    EXPECT_TRUE(std::filesystem::exists(session.library().photo_file(photo)));
}

TEST_F(StepsTest, AFileInTheClipboardIsBroughtInOnceHoweverOftenItIsPasted) {
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(Qt::darkCyan);
    const Path file = whole.folder / "braid.png";
    picture.save(QString::fromStdString(file.native()));
    const auto clipboard = [&] {
        auto* data = new QMimeData;
        data->setUrls({QUrl::fromLocalFile(QString::fromStdString(file.native()))});
        return data;
    };
    paste_into_first_step(clipboard());
    const std::size_t photos = session.library().photos().all().size();
    QGuiApplication::clipboard()->setMimeData(clipboard());
    key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.work() == nullptr; }));
    EXPECT_EQ(session.library().photos().all().size(), photos);
    EXPECT_EQ(steps()[0]->value().photos.size(), 1U);
    EXPECT_TRUE(std::filesystem::exists(file));
}

TEST_F(StepsTest, WordsInTheClipboardArePastedAsWords) {
    show(whole.look);
    go_to_step(0);
    key(Qt::Key_Return);
    QGuiApplication::clipboard()->setText(QStringLiteral("gently "));
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(holds(kept(whole.look).build[0].words, "gently"));
}

}  // namespace
}  // namespace quarterturn
