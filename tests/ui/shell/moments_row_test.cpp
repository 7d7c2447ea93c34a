#include "ui/shell/moments_row.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QMenu>
#include <QScreen>

#include "ui/shell/moment_button.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

TEST(MomentsRow, OnALowScreenItsMenuStandsCloserAndNotInTwoColumns) {
    const int high = QGuiApplication::primaryScreen()->availableGeometry().height();
    const int line = std::max(QFontMetrics(QApplication::font()).height(), least_target);
    const int more_than_fit = high / (line + 2 * space(1)) + 1;
    std::vector<ScreenEntry> entries;
    for (int i = 0; i < more_than_fit + 2; ++i) {
        const QString title = QStringLiteral("A moment of hers, number %1").arg(i);
        entries.push_back({static_cast<Moment>(i % 4), title, {}});
    }
    MomentsRow row(entries);
    row.resize(300, 60);
    row.show();
    for (auto* button : row.findChildren<MomentButton*>()) {
        if (button->text() == QStringLiteral("More")) button->click();
    }
    QMenu& menu = row.others();
    ASSERT_GE(menu.actions().size(), more_than_fit);
    EXPECT_EQ(menu.actionGeometry(menu.actions().first()).x(),
              menu.actionGeometry(menu.actions().last()).x());
    menu.hide();
}

}  // namespace
}  // namespace quarterturn
