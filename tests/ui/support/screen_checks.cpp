#include "tests/ui/support/screen_checks.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QCalendarWidget>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <set>

#include "tests/ui/support/painted_contrast.h"

namespace quarterturn {
namespace {

QString called(const QWidget& widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    const auto* label = qobject_cast<const QLabel*>(&widget);
    QString text = button ? button->text() : label ? label->text() : widget.accessibleName();
    if (text.isEmpty()) text = widget.objectName();
    return QStringLiteral("%1 \"%2\"")
        .arg(QString::fromLatin1(widget.metaObject()->className()), text.left(60));
}

// The inside of a calendar, a spin box or a scroll area is Qt's own.
bool inside_of_another_control(const QWidget& widget) {
    for (const QWidget* parent = widget.parentWidget(); parent; parent = parent->parentWidget()) {
        if (qobject_cast<const QAbstractSpinBox*>(parent) ||
            qobject_cast<const QComboBox*>(parent) ||
            qobject_cast<const QCalendarWidget*>(parent)) {
            return true;
        }
    }
    return qobject_cast<const QScrollBar*>(&widget);
}

bool is_control(const QWidget& widget) {
    const bool control =
        qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
        qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
        qobject_cast<const QPlainTextEdit*>(&widget) || widget.focusPolicy() & Qt::TabFocus;
    return control && !inside_of_another_control(widget);
}

QList<QWidget*> visible_children(const QWidget& root) {
    QList<QWidget*> visible;
    for (QWidget* child : root.findChildren<QWidget*>()) {
        if (child->isVisibleTo(&root) && child->window() == root.window()) visible << child;
    }
    return visible;
}

QList<QWidget*> controls(const QWidget& root) {
    QList<QWidget*> found;
    for (QWidget* child : visible_children(root)) {
        if (is_control(*child)) found << child;
    }
    return found;
}

// A scroll area without anything to scroll or to choose from needs no keyboard.
bool takes_tab(const QWidget& widget) {
    return widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) && !widget.focusProxy();
}

double least_contrast(const QWidget& widget) {
    const QFontInfo font(widget.font());
    const bool large = font.pointSizeF() >= 18 || (font.bold() && font.pointSizeF() >= 14);
    return large ? 3.0 : 4.5;
}

bool has_text(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) return !label->text().isEmpty();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        return !button->text().isEmpty() && button->isEnabled();
    }
    const auto* line = qobject_cast<const QLineEdit*>(&widget);
    return line && !line->text().isEmpty();
}

bool too_little_room(const QWidget& widget) {
    const QSize room = widget.size();
    if (widget.hasHeightForWidth()) return widget.heightForWidth(room.width()) > room.height();
    const QSize needed = widget.minimumSizeHint().expandedTo(
        qobject_cast<const QAbstractButton*>(&widget) ? widget.sizeHint() : QSize());
    return needed.width() > room.width() || needed.height() > room.height();
}

// What a scroll area shows is cut on purpose; anything else must lie inside its parent.
bool outside_of_parent(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    if (!parent || qobject_cast<const QAbstractScrollArea*>(parent->parentWidget())) return false;
    return !parent->rect().contains(widget.geometry());
}

}  // namespace

void show_active(QWidget& root) {
    if (!root.isVisible()) {
        root.show();
        (void)QTest::qWaitForWindowActive(&root);
    }
    QApplication::processEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::processEvents();
}

QStringList controls_without_name(const QWidget& root) {
    QStringList problems;
    for (QWidget* control : controls(root)) {
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(control);
        if (!face || !face->text(QAccessible::Name).trimmed().isEmpty()) continue;
        problems << called(*control) + QStringLiteral(" has no name for a screen reader");
    }
    return problems;
}

QStringList out_of_reach_of_tab(QWidget& root) {
    show_active(root);
    std::set<QWidget*> reached;
    QWidget* last = nullptr;
    for (int presses = 0; presses < 2000; ++presses) {
        QTest::keyClick(root.windowHandle(), Qt::Key_Tab);
        QWidget* focus = QApplication::focusWidget();
        if (!focus) break;
        // In a date, Tab goes from the day to the month before it goes on.
        if (focus == std::exchange(last, focus)) continue;
        if (!reached.insert(focus).second) break;
    }
    QStringList problems;
    for (QWidget* control : controls(root)) {
        if (!takes_tab(*control) || reached.contains(control)) continue;
        problems << called(*control) + QStringLiteral(" is not reached by Tab");
    }
    return problems;
}

QStringList text_without_contrast(QWidget& root) {
    show_active(root);
    const QImage picture = root.grab().toImage();
    QStringList problems;
    for (QWidget* widget : visible_children(root)) {
        if (!has_text(*widget) || inside_of_another_control(*widget)) continue;
        // What is scrolled out of sight, or cut by the edge of the page, is seen at another size.
        if (widget->visibleRegion().boundingRect() != widget->rect()) continue;
        const QRect area(widget->mapTo(&root, QPoint()), widget->size());
        const double contrast = painted_contrast(picture, area);
        if (contrast >= least_contrast(*widget)) continue;
        problems << QStringLiteral("%1 stands at %2 : 1 only").arg(called(*widget)).arg(contrast);
    }
    return problems;
}

QStringList targets_too_small(const QWidget& root, int least) {
    QStringList problems;
    for (const QWidget* control : controls(root)) {
        if (control->width() >= least && control->height() >= least) continue;
        problems << QStringLiteral("%1 is %2 by %3 px")
                        .arg(called(*control))
                        .arg(control->width())
                        .arg(control->height());
    }
    return problems;
}

QStringList clipped_text(const QWidget& root) {
    QStringList problems;
    for (const QWidget* widget : visible_children(root)) {
        if (!has_text(*widget) || inside_of_another_control(*widget)) continue;
        if (too_little_room(*widget)) {
            problems << QStringLiteral("%1 needs more room than %2 by %3 px")
                            .arg(called(*widget))
                            .arg(widget->width())
                            .arg(widget->height());
        }
        if (outside_of_parent(*widget)) {
            problems << called(*widget) + QStringLiteral(" lies outside of its part");
        }
    }
    return problems;
}

// A strip that is drawn along by a finger is of a class of its own.
QStringList wider_than_their_pages(const QWidget& root) {
    QStringList problems;
    for (const QWidget* child : visible_children(root)) {
        const auto* page = qobject_cast<const QScrollArea*>(child);
        if (!page || page->metaObject() != &QScrollArea::staticMetaObject || !page->widget() ||
            page->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) {
            continue;
        }
        const int needed = page->widget()->width();
        const int seen = page->viewport()->width();
        if (needed <= seen) continue;
        problems << QStringLiteral("%1 is %2 px wide, of which %3 are seen")
                        .arg(called(*page->widget()))
                        .arg(needed)
                        .arg(seen);
    }
    return problems;
}

QStringList problems_with(QWidget& root) {
    show_active(root);
    return controls_without_name(root) + out_of_reach_of_tab(root) + text_without_contrast(root) +
           targets_too_small(root) + clipped_text(root) + wider_than_their_pages(root);
}

QStringList problems_at_all_sizes(QWidget& root) {
    QStringList problems;
    for (const QSize size : {QSize(1280, 800), QSize(1920, 1080), QSize(960, 540)}) {
        root.resize(size);
        show_active(root);
        if (root.size() != size) {
            problems << QStringLiteral("does not fit into %1 by %2 px")
                            .arg(size.width())
                            .arg(size.height());
        }
        for (const QString& problem : problems_with(root)) {
            problems << QStringLiteral("at %1 px: %2").arg(size.width()).arg(problem);
        }
    }
    return problems;
}

}  // namespace quarterturn
