#include "ui/pictures/picture_loader.h"

#include <QSignalSpy>
#include <QTest>
#include <atomic>

namespace quarterturn {
namespace {

constexpr int sharp_edge = 1600;

// Says what it was asked for; the small picture is red, the sharp one green.
struct Asked {
    std::mutex mutex;
    std::vector<std::string> log;
    std::atomic<bool> broken = false;
    std::atomic<bool> nothing_opens = false;
    std::atomic<bool> hold_sharp = false;  // sharp pictures wait until it is false
};

class PaintedSource final : public PictureSource {
  public:
    explicit PaintedSource(std::shared_ptr<Asked> asked) : asked_(std::move(asked)) {}

    FetchedPicture small(const Photo& photo) override {
        return paint("small", photo, 512, Qt::red);
    }
    FetchedPicture sharp(const Photo& photo, int long_edge) override {
        asked_->hold_sharp.wait(true);
        return paint("sharp", photo, long_edge, Qt::green);
    }

  private:
    FetchedPicture paint(const std::string& kind, const Photo& photo, int edge,
                         const QColor& colour) {
        const std::lock_guard lock(asked_->mutex);
        asked_->log.push_back(kind + " " + std::to_string(photo.id.value));
        if (asked_->broken) return {{}, QStringLiteral("it is damaged")};
        if (asked_->nothing_opens) return {{}, QStringLiteral("No photo can be opened."), true};
        QImage image(edge, edge / 2, QImage::Format_RGB32);
        image.fill(colour);
        return {image, {}};
    }

    std::shared_ptr<Asked> asked_;
};

PictureWish wish(std::int64_t photo, int edge = sharp_edge) {
    PictureWish made;
    made.photo.id = PhotoId{photo};
    made.long_edge = edge;
    return made;
}

class PictureLoaderTest : public testing::Test {
  protected:
    std::unique_ptr<PictureLoader> make(qint64 bytes = PictureLoader::default_cache_bytes) {
        return std::make_unique<PictureLoader>(
            [asked = asked] { return std::make_unique<PaintedSource>(asked); }, bytes, 1);
    }
    std::size_t times_asked() {
        const std::lock_guard lock(asked->mutex);
        return asked->log.size();
    }

    std::shared_ptr<Asked> asked = std::make_shared<Asked>();
    QObject screen;
};

TEST_F(PictureLoaderTest, ShowsTheSmallPictureUntilTheSharpOneIsThere) {
    const auto loader = make();
    QSignalSpy arrived(loader.get(), &PictureLoader::arrived);
    EXPECT_TRUE(loader->at_hand(PhotoId{1}, sharp_edge).isNull());
    asked->hold_sharp = true;
    loader->want(&screen, {wish(1)});
    ASSERT_TRUE(arrived.wait());
    EXPECT_EQ(loader->at_hand(PhotoId{1}, sharp_edge).pixelColor(5, 5), QColor(Qt::red));
    asked->hold_sharp = false;
    asked->hold_sharp.notify_all();
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.size() == 2; }));
    EXPECT_EQ(loader->at_hand(PhotoId{1}, sharp_edge).pixelColor(5, 5), QColor(Qt::green));
    EXPECT_EQ(loader->at_hand(PhotoId{1}, small_long_edge).pixelColor(5, 5), QColor(Qt::red));
}

TEST_F(PictureLoaderTest, ASmallPlaceNeedsNoSharpPicture) {
    const auto loader = make();
    QSignalSpy arrived(loader.get(), &PictureLoader::arrived);
    loader->want(&screen, {wish(1, 200), wish(2, 200)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.size() == 2; }));
    QTest::qWait(20);
    EXPECT_EQ(asked->log, (std::vector<std::string>{"small 1", "small 2"}));
}

TEST_F(PictureLoaderTest, WhatIsAtHandIsNotFetchedAgain) {
    const auto loader = make();
    QSignalSpy arrived(loader.get(), &PictureLoader::arrived);
    loader->want(&screen, {wish(1)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.size() == 2; }));
    loader->want(&screen, {wish(1), wish(2, 100)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.size() == 3; }));
    EXPECT_EQ(times_asked(), 3u);
}

TEST_F(PictureLoaderTest, KeepsNoMorePicturesThanItsMemoryHolds) {
    const qint64 one_small_picture = 512 * 256 * 4;
    const auto loader = make(2 * one_small_picture);
    QSignalSpy arrived(loader.get(), &PictureLoader::arrived);
    loader->want(&screen, {wish(1, 100), wish(2, 100), wish(3, 100), wish(4, 100)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.size() == 4; }));
    EXPECT_TRUE(loader->at_hand(PhotoId{1}, 100).isNull());
    EXPECT_FALSE(loader->at_hand(PhotoId{4}, 100).isNull());
}

TEST_F(PictureLoaderTest, SaysWhyThereIsNoPictureAndDoesNotTryForEver) {
    const auto loader = make();
    asked->broken = true;
    QSignalSpy refused(loader.get(), &PictureLoader::refused);
    loader->want(&screen, {wish(1, 100)});
    ASSERT_TRUE(refused.wait());
    EXPECT_EQ(refused.front()[1].toString(), QStringLiteral("it is damaged"));
    loader->want(&screen, {wish(1, 100)});
    QTest::qWait(20);
    EXPECT_EQ(times_asked(), 1u);
}

TEST_F(PictureLoaderTest, ThatNothingOpensIsSaidOnce) {
    asked->nothing_opens = true;
    const auto loader = make();
    QSignalSpy said(loader.get(), &PictureLoader::nothing_opens);
    QSignalSpy refused(loader.get(), &PictureLoader::refused);
    loader->want(&screen, {wish(7, 100), wish(8, 100)});
    EXPECT_TRUE(QTest::qWaitFor([&] { return refused.count() >= 2; }));
    EXPECT_EQ(said.count(), 1);
}

TEST_F(PictureLoaderTest, AViewerThatIsDestroyedIsForgotten) {
    const auto loader = make();
    auto viewer = std::make_unique<QObject>();
    loader->want(viewer.get(), {});
    viewer.reset();
    QSignalSpy arrived(loader.get(), &PictureLoader::arrived);
    loader->want(&screen, {wish(7, 100)});
    EXPECT_TRUE(arrived.wait());
}

}  // namespace
}  // namespace quarterturn
