#include "ui/widgets/measured_text.h"

#include <gtest/gtest.h>

#include <QFontMetrics>
#include <QLabel>
#include <QRect>
#include <memory>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

const QStringList texts{
    QStringLiteral("Low chignon"),
    QStringLiteral("The left quarter from behind is missing: bring a photo of it in."),
    QStringLiteral("Two lines\nand a\ttab, with an averyveryverylongwordthatfitsnowhere in them"),
    QStringLiteral("Zoë & Ana – “soft” waves"),
    QString::fromUtf8("שיער אסוף below עם צמה"),
    QString::fromUtf8("編み込み with 三つ編み"),
};

class MeasuredTextTest : public testing::TestWithParam<TextRole> {};

TEST_P(MeasuredTextTest, IsAsLargeAsWhatIsPainted) {
    const QFont font = text_font(GetParam());
    for (const QString& text : texts) {
        MeasuredText laid;
        for (int width : {400, 1, 37, 90, 91, 92, 93, 94, 150, 400, 900, QWIDGETSIZE_MAX, 60}) {
            const QSize painted =
                QFontMetrics(font)
                    .boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text)
                    .size();
            const QSize size = laid.size(width, text, font);
            EXPECT_EQ(size.height(), painted.height()) << text.toStdString() << " at " << width;
            EXPECT_GE(size.width(), painted.width()) << text.toStdString() << " at " << width;
            EXPECT_LE(size.width(), painted.width() + 1) << text.toStdString() << " at " << width;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Roles, MeasuredTextTest,
                         testing::Values(TextRole::title, TextRole::heading, TextRole::body,
                                         TextRole::small));

TEST(MeasuredText, FollowsAnotherTextAndFont) {
    MeasuredText laid;
    const QFont body = text_font(TextRole::body);
    const QSize before = laid.size(100, texts[0], body);
    EXPECT_NE(laid.size(100, texts[1], body), before);
    EXPECT_NE(laid.size(100, texts[0], text_font(TextRole::title)), before);
    EXPECT_EQ(laid.size(100, texts[0], body), before);
}

// A plain label of Qt's, with what the label was given.
TEST(MeasuredText, MakesLabelsAsLargeAsQtDoes) {
    for (const QString& text : texts) {
        const std::unique_ptr<QLabel> label(make_text(text));
        QLabel plain(text);
        plain.setTextFormat(Qt::PlainText);
        plain.setFont(label->font());
        plain.setWordWrap(true);
        plain.setMinimumWidth(1);
        plain.setAlignment(label->alignment());
        EXPECT_EQ(label->sizeHint(), plain.sizeHint()) << text.toStdString();
        EXPECT_EQ(label->minimumSizeHint(), plain.minimumSizeHint()) << text.toStdString();
        for (int width : {0, 50, 200, 800}) {
            EXPECT_EQ(label->heightForWidth(width), plain.heightForWidth(width));
        }
    }
}

}  // namespace
}  // namespace quarterturn
