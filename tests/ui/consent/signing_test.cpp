#include <QImage>
#include <QPointingDevice>
#include <QScrollArea>
#include <QTabletEvent>
#include <QWindow>

#include "tests/ui/consent/consent_fixture.h"
#include "ui/consent/signature_pad.h"

namespace quarterturn {
namespace {

int dark_pixels(const QImage& picture) {
    int dark = 0;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) dark += qGray(picture.pixel(x, y)) < 128 ? 1 : 0;
    }
    return dark;
}

struct Signing : ConsentScreenTest {
    Signing() {
        press("Sign on the screen");
        pad = screen.findChild<SignaturePad*>();
        for (QWidget* above = pad; above; above = above->parentWidget()) {
            if (auto* area = qobject_cast<QScrollArea*>(above)) area->ensureWidgetVisible(pad);
        }
    }

    void sign_with_the_mouse() {
        QTest::mousePress(pad, Qt::LeftButton, {}, {40, 60});
        for (int x = 50; x < 200; x += 10) QTest::mouseMove(pad, {x, 60 + x % 40});
        QTest::mouseRelease(pad, Qt::LeftButton, {}, {200, 80});
    }

    SignaturePad* pad = nullptr;
};

TEST_F(Signing, ShowsTheWordingOfTheForm) {
    EXPECT_TRUE(says("May I show photos of your hair?"));
    EXPECT_TRUE(says("Mira Okonjo-Lindqvist"));
    EXPECT_TRUE(says("starting point"));
    EXPECT_TRUE(says("the scan is attached; or says it before a witness"));
    EXPECT_FALSE(says("Age: ____")) << "what is filled in by hand has fields here";
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(Signing, KeepsAnswersWithThePictureOfWhatWasSigned) {
    press("On my website: Yes, hair only");
    press("In social media: No");
    press("To teach others: Yes, with my face");
    sign_with_the_mouse();
    press("Record what is signed");
    std::map<Use, ConsentEntry> said;
    for (const ConsentEntry& entry : entries()) said[entry.use] = entry;
    ASSERT_EQ(said.size(), 3U);
    EXPECT_EQ(said[Use::website].said, ConsentSaid::granted);
    EXPECT_EQ(said[Use::website].shown, ShownAs::hair_only);
    EXPECT_EQ(said[Use::teaching].shown, ShownAs::with_her_face);
    EXPECT_EQ(said[Use::social_media].said, ConsentSaid::declined);
    for (const auto& [use, entry] : said) {
        EXPECT_EQ(entry.how, HowGiven::signed_form);
        ASSERT_EQ(entry.papers.size(), 1U);
        EXPECT_EQ(entry.papers[0], said[Use::website].papers[0]);
    }
    const Path file = library().folder() / said[Use::website].papers[0].path;
    const QImage picture(QString::fromStdString(file.string()), "PNG");
    ASSERT_FALSE(picture.isNull());
    // A whole page of words, and the strokes below it.
    const int page = picture.width() * 297 / 210;
    EXPECT_GT(picture.height(), page);
    EXPECT_GT(dark_pixels(picture.copy(0, 0, picture.width(), page)), 5000);
    EXPECT_GT(dark_pixels(picture.copy(0, page, picture.width(), picture.height() - page)), 150);
    EXPECT_TRUE(says("What Mira Okonjo-Lindqvist allows"));  // back on the page
    EXPECT_TRUE(says("Granted, hair only"));
}

TEST_F(Signing, NothingIsRecordedWithoutASignature) {
    press("On my website: Yes, hair only");
    press("Record what is signed");
    EXPECT_TRUE(says("The signature is still missing."));
    QTest::mouseClick(pad, Qt::LeftButton, {}, {60, 60});
    press("Record what is signed");
    EXPECT_TRUE(entries().empty()) << "a dot is no signature";
    sign_with_the_mouse();
    press("Clear the signature");
    press("Record what is signed");
    EXPECT_TRUE(entries().empty());
}

TEST_F(Signing, NothingIsRecordedWithoutAnAnswer) {
    sign_with_the_mouse();
    press("Record what is signed");
    EXPECT_TRUE(says("Nothing is ticked yet, and that means no."));
    press("Leave without recording");
    EXPECT_TRUE(entries().empty());
    EXPECT_TRUE(says("Not asked"));
}

TEST_F(Signing, AFingerLeavesInk) {
    static QPointingDevice* const finger = QTest::createTouchDevice();  // Qt keeps it for ever
    // A window larger than the screen, as at twice the size, gets no touch that is not sent to it.
    QWindow* const window = pad->window()->windowHandle();
    const auto at = [&](QPoint point) { return pad->mapTo(pad->window(), point); };
    QTest::touchEvent(window, finger).press(0, at({40, 60}));
    QTest::touchEvent(window, finger).move(0, at({90, 90}));
    QTest::touchEvent(window, finger).release(0, at({140, 60}));
    EXPECT_GT(dark_pixels(pad->picture()), 300);
}

TEST_F(Signing, APenLeavesInk) {
    const QPointingDevice* pen = QPointingDevice::primaryPointingDevice();
    const auto send = [&](QEvent::Type type, QPointF at, Qt::MouseButtons buttons) {
        QTabletEvent event(type, pen, at, pad->mapToGlobal(at), 0.5, 0, 0, 0, 0, 0, {},
                           Qt::LeftButton, buttons);
        QCoreApplication::sendEvent(pad, &event);
    };
    send(QEvent::TabletPress, {40, 60}, Qt::LeftButton);
    send(QEvent::TabletMove, {120, 90}, Qt::LeftButton);
    send(QEvent::TabletRelease, {120, 90}, Qt::NoButton);
    EXPECT_GT(dark_pixels(pad->picture()), 300);
}

}  // namespace
}  // namespace quarterturn
