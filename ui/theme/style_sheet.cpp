#include "ui/theme/style_sheet.h"

#include <QMap>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

// Names in @…@ are put in below. A border that grows when a control has the focus takes its pixel
// from the padding, so that nothing moves.
const char* const sheet = R"(
QPushButton, QToolButton {
    background: @card@; color: @ink@; border: 2px solid @outline@; border-radius: 8px;
    padding: @pad@px @wide_pad@px; min-height: @target@px; outline: none;
}
QPushButton:hover, QToolButton:hover { background: @wash@; }
QPushButton:pressed, QToolButton:pressed { background: @hairline@; }
QPushButton:disabled { color: @quiet@; background: @page@; border: 2px dashed @hairline@; }
QPushButton:focus, QToolButton:focus { border: 3px double @accent@; padding: @pad_less@px @wide_pad_less@px; }
QPushButton[kind="next"] {
    background: @accent@; color: @on_accent@; border-color: @accent@; font-weight: bold;
}
QPushButton[kind="next"]:focus { border: 3px double @on_accent@; padding: @pad_less@px @wide_pad_less@px; }
QPushButton[kind="next"]:disabled { background: @page@; color: @quiet@; border: 2px dashed @outline@; }
QPushButton[kind="next"]:hover { border-color: @ink@; }
QPushButton[kind="quiet"], QToolButton[kind="quiet"] {
    background: transparent; border-color: transparent; color: @accent@;
}
QPushButton[kind="quiet"]:hover { border-color: @outline@; }
QPushButton[kind="quiet"]:focus, QToolButton[kind="quiet"]:focus { border: 3px double @accent@; }
QPushButton[kind="quiet"]:disabled { color: @quiet@; border-color: transparent; }
QPushButton:checked { background: @wash@; border: 3px solid @accent@; padding: @pad_less@px @wide_pad_less@px; }
QPushButton[kind="chosen"] { background: @wash@; border-color: @accent@; }
QPlainTextEdit, QTextEdit {
    background: @card@; color: @ink@; border: 2px solid @outline@; border-radius: 6px;
    padding: @pad@px; selection-background-color: @accent@; selection-color: @on_accent@;
}
QPlainTextEdit:focus, QTextEdit:focus { border: 3px solid @accent@; padding: @pad_less@px; }
QComboBox QAbstractItemView, QMenu {
    background: @card@; color: @ink@; border: 1px solid @outline@; padding: 4px;
    selection-background-color: @accent@; selection-color: @on_accent@;
}
QMenu::item { padding: @pad@px @wide_pad@px; min-height: @target@px; border-radius: 4px; }
QMenu::item:selected { background: @accent@; color: @on_accent@; }
QMenu::item:disabled { color: @quiet@; }
QComboBox QAbstractItemView::item { min-height: @target@px; }
QFrame[kind="card"] { background: @card@; border: 1px solid @hairline@; border-radius: 14px; }
QFrame[kind="choices"] { background: @card@; border: 1px solid @outline@; border-radius: 8px; }
QFrame[kind="choices"] QListView { background: @card@; border: none; }
QFrame[kind="choices"] QListView::item:selected { background: @accent@; color: @on_accent@; }
QFrame[kind="line"] { background: @hairline@; border: none; max-height: 1px; min-height: 1px; }
QLabel[kind="quiet"] { color: @quiet@; }
QScrollArea, QScrollArea > QWidget > QWidget[kind="page"] { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 14px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 14px; margin: 0; }
QScrollBar::handle { background: @outline@; border-radius: 4px; margin: 3px; min-height: 32px; min-width: 32px; }
QScrollBar::handle:hover { background: @accent@; }
QScrollBar::handle:disabled { background: transparent; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QToolTip { background: @card@; color: @ink@; border: 1px solid @outline@; padding: 6px; }
QProgressBar { background: @card@; border: 2px solid @outline@; border-radius: 8px; min-height: 12px; max-height: 12px; }
QProgressBar::chunk { background: @accent@; border-radius: 5px; }
QCalendarWidget QWidget { alternate-background-color: @wash@; }
QCalendarWidget QToolButton { border: none; background: transparent; padding: 4px; }
QCalendarWidget QAbstractItemView { background: @card@; border: none; }
)";

QString pixels(int value) {
    return QString::number(value);
}

}  // namespace

QString style_sheet(const QPalette& palette) {
    const QMap<QString, QString> values{
        {QStringLiteral("page"), page_colour(palette).name()},
        {QStringLiteral("card"), card_colour(palette).name()},
        {QStringLiteral("ink"), ink_colour(palette).name()},
        {QStringLiteral("quiet"), quiet_colour(palette).name()},
        {QStringLiteral("outline"), outline_colour(palette).name()},
        {QStringLiteral("hairline"), hairline_colour(palette).name()},
        {QStringLiteral("accent"), accent_colour(palette).name()},
        {QStringLiteral("on_accent"), on_accent_colour(palette).name()},
        {QStringLiteral("wash"), wash_colour(palette).name()},
        {QStringLiteral("pad"), pixels(space(1))},
        {QStringLiteral("pad_less"), pixels(space(1) - 1)},
        {QStringLiteral("wide_pad"), pixels(space(4))},
        {QStringLiteral("wide_pad_less"), pixels(space(4) - 1)},
        {QStringLiteral("target"), pixels(least_target)},
    };
    QString text = QString::fromUtf8(sheet);
    for (auto value = values.begin(); value != values.end(); ++value) {
        text.replace(QLatin1Char('@') + value.key() + QLatin1Char('@'), value.value());
    }
    return text;
}

}  // namespace quarterturn
