#include "ui/widgets/parts.h"

#include <QGuiApplication>
#include <QStyle>
#include <QVariant>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/measured_text.h"

namespace quarterturn {
namespace {

const char* const kind_property = "kind";

// Answers what QLabel answers, sooner.
class TextLabel : public QLabel {
  public:
    using QLabel::QLabel;

    int heightForWidth(int width) const override {
        return is_plain() ? size(std::max(width, minimumWidth())).height()
                          : QLabel::heightForWidth(width);
    }
    // Without a width it has as many lines as the least width gives it.
    QSize sizeHint() const override {
        ensurePolished();
        return is_plain() ? size(minimumWidth()) : QLabel::sizeHint();
    }
    QSize minimumSizeHint() const override {
        ensurePolished();
        if (!is_plain()) return QLabel::minimumSizeHint();
        return {size(minimumWidth()).width(), size(QWIDGETSIZE_MAX).height()};
    }

  private:
    bool is_plain() const {
        return textFormat() == Qt::PlainText && !text().isEmpty() && !text().contains(u'\t') &&
               wordWrap() && minimumWidth() > 0 && frameWidth() == 0 && margin() == 0 &&
               contentsMargins().isNull();
    }
    QSize size(int width) const {
        return laid_.size(width, text(), font()).expandedTo(minimumSize());
    }

    mutable MeasuredText laid_;
};

QLabel* make_label(const QString& text, TextRole role) {
    auto* label = new TextLabel(text);
    label->setFont(text_font(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumWidth(1);
    // By the layout, not by the text: a name in another script starts where the others start.
    const auto start = QGuiApplication::isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft;
    label->setAlignment(start | Qt::AlignAbsolute | Qt::AlignVCenter);
    return label;
}

QPushButton* make_kind_of_button(const QString& text, const QString& kind) {
    auto* button = make_button(text);
    button->setProperty(kind_property, kind);
    return button;
}

}  // namespace

QLabel* make_title(const QString& text) {
    return make_label(text, TextRole::title);
}
QLabel* make_heading(const QString& text) {
    return make_label(text, TextRole::heading);
}
QLabel* make_text(const QString& text) {
    return make_label(text, TextRole::body);
}

QLabel* make_quiet(const QString& text) {
    QLabel* label = make_label(text, TextRole::body);
    label->setProperty(kind_property, QStringLiteral("quiet"));
    return label;
}

QPushButton* make_button(const QString& text) {
    auto* button = new QPushButton(text);
    button->setAutoDefault(true);  // Return presses it
    button->setCursor(Qt::PointingHandCursor);
    return button;
}

QPushButton* make_next_button(const QString& text) {
    return make_kind_of_button(text, QStringLiteral("next"));
}

QPushButton* make_quiet_button(const QString& text) {
    return make_kind_of_button(text, QStringLiteral("quiet"));
}

Card make_card() {
    auto* frame = new QFrame;
    frame->setProperty(kind_property, QStringLiteral("card"));
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(2));
    return {frame, column};
}

QFrame* make_hairline() {
    auto* line = new QFrame;
    line->setProperty(kind_property, QStringLiteral("line"));
    return line;
}

QVBoxLayout* make_column(int steps_between) {
    auto* column = new QVBoxLayout;
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(steps_between));
    return column;
}

QHBoxLayout* make_row(int steps_between) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(steps_between));
    return row;
}

void add_sentences(QVBoxLayout& column, const QStringList& sentences, const QString& last) {
    constexpr qsizetype most = 8;
    for (const QString& sentence : sentences.first(std::min(most, sentences.size()))) {
        column.addWidget(make_quiet(sentence));
    }
    if (const auto more = sentences.size() - most; more > 0) {
        column.addWidget(make_quiet(QCoreApplication::translate("parts", "And %n more like these.",
                                                                nullptr, static_cast<int>(more))));
    }
    if (!sentences.isEmpty() && !last.isEmpty()) column.addWidget(make_quiet(last));
}

void empty_layout(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        if (item->layout()) empty_layout(item->layout());
        delete item;
    }
}

void show_kind(QWidget& widget, const QString& kind) {
    if (widget.property(kind_property).toString() == kind) return;
    widget.setProperty(kind_property, kind);
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
}

}  // namespace quarterturn
