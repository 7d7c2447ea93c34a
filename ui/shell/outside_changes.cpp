#include "ui/shell/outside_changes.h"

#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>

#include "ui/shell/keyboard_place.h"
#include "ui/shell/session.h"

namespace quarterturn {
namespace {

constexpr std::chrono::seconds between_looks{1};

bool she_is_busy(const QWidget& window) {
    if (QApplication::activePopupWidget() || QApplication::activeModalWidget()) return true;
    QWidget* focus = window.focusWidget();
    if (const auto* line = qobject_cast<QLineEdit*>(focus)) return line->isModified();
    const auto* text = qobject_cast<QPlainTextEdit*>(focus);
    return text && text->document()->isModified();
}

}  // namespace

OutsideChanges::OutsideChanges(Session& session, QWidget& window)
    : QObject(&window), session_(session), window_(window) {
    connect(&timer_, &QTimer::timeout, this, &OutsideChanges::look);
    timer_.start(between_looks);
}

void OutsideChanges::look() {
    if (session_.work() || she_is_busy(window_) || !session_.changed_outside()) return;
    const KeyboardPlace place(window_);
    session_.touch();
    place.come_back(window_);
}

}  // namespace quarterturn
