#include "ui/pairs/fact_section.h"

#include <QLocale>
#include <QPainter>
#include <QStyle>
#include <QStyleOptionButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/pairs/fact_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

int row_height(const QFontMetrics& metrics) {
    return std::max(metrics.height() + space(2), least_target + 2);
}

bool has(const std::vector<std::string>& values, const std::string& value) {
    return std::ranges::find(values, value) != values.end();
}

}  // namespace

FilterValue::FilterValue(const QString& value, QWidget* parent) : TextButton(value, parent) {
    setCheckable(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    show_count(0);
}

void FilterValue::show_count(int pairs) {
    pairs_ = pairs;
    //: a value to filter by and how many pairs have it
    setAccessibleName(tr("%1, %2").arg(text(), tr("%n pair(s)", nullptr, pairs)));
    update();
}

QSize FilterValue::sizeHint() const {
    return {space(30), row_height(fontMetrics())};
}

void FilterValue::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    if (underMouse()) painter.fillRect(rect(), wash_colour(palette()));
    QStyleOptionButton option;
    option.initFrom(this);
    option.state |= isChecked() ? QStyle::State_On : QStyle::State_Off;
    option.state &= ~QStyle::State_HasFocus;
    const int side = style()->pixelMetric(QStyle::PM_IndicatorWidth);
    const auto laid = [&](const QRect& part) {
        return QStyle::visualRect(layoutDirection(), rect(), part);
    };
    option.rect = laid({space(1), (height() - side) / 2, side, side});
    style()->drawPrimitive(QStyle::PE_IndicatorCheckBox, &option, &painter, this);
    const QString count = QLocale().toString(pairs_);
    const int count_width = fontMetrics().horizontalAdvance(count) + space(2);
    const int from = side + space(3);
    const QRect words = laid({from, 0, width() - from - count_width - space(1), height()});
    painter.setPen(pairs_ > 0 || isChecked() ? ink_colour(palette()) : quiet_colour(palette()));
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeading,
                     fontMetrics().elidedText(text(), Qt::ElideRight, words.width()));
    painter.setPen(quiet_colour(palette()));
    painter.drawText(laid({width() - count_width - space(1), 0, count_width, height()}),
                     Qt::AlignVCenter | Qt::AlignTrailing, count);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

SectionHead::SectionHead(const QString& name, QWidget* parent) : TextButton(name, parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    QFont bold = text_font(TextRole::body);
    bold.setBold(true);
    setFont(bold);
}

void SectionHead::show_open(bool open) {
    open_ = open;
    setAccessibleDescription(open ? tr("open") : tr("shut"));
    update();
}

void SectionHead::show_chosen(const QString& values) {
    chosen_ = values;
    setAccessibleName(values.isEmpty() ? text() : tr("%1: %2").arg(text(), values));
    update();
}

QSize SectionHead::sizeHint() const {
    return {space(30), row_height(fontMetrics()) + space(1)};
}

void SectionHead::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    const auto laid = [&](const QRect& part) {
        return QStyle::visualRect(layoutDirection(), rect(), part);
    };
    const int name = fontMetrics().horizontalAdvance(text()) + space(2);
    painter.setFont(font());
    painter.setPen(ink_colour(palette()));
    painter.drawText(laid({space(1), 0, name, height()}), Qt::AlignVCenter | Qt::AlignLeading,
                     text());
    const int arrow = space(5);
    draw_chevron(painter, laid({width() - arrow, 0, arrow, height()}), ink_colour(palette()),
                 open_);
    const QRect rest(space(1) + name, 0, width() - name - arrow - space(3), height());
    if (!open_ && !chosen_.isEmpty() && rest.width() > 0) {
        const QFont plain = text_font(TextRole::body);
        painter.setFont(plain);
        painter.setPen(accent_colour(palette()));
        painter.drawText(laid(rest), Qt::AlignVCenter | Qt::AlignTrailing,
                         QFontMetrics(plain).elidedText(chosen_, Qt::ElideRight, rest.width()));
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

FactSection::FactSection(Fact fact, QWidget* parent)
    : QWidget(parent),
      fact_(fact),
      head_(new SectionHead(shown(fact))),
      list_(new QWidget),
      rows_(make_column(0)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head_);
    list_->setLayout(rows_);
    column->addWidget(list_);
    column->addWidget(make_hairline());
    connect(head_, &SectionHead::clicked, this, [this] { open(!open_); });
    open(false);
}

void FactSection::open(bool open) {
    open_ = open;
    list_->setVisible(open);
    head_->show_open(open);
}

void FactSection::show_values(const Counts& counts, const std::vector<std::string>& chosen) {
    setVisible(!counts.empty());
    const bool same = std::ranges::is_permutation(
        counts, values_, {}, [](const auto& each) { return each.first; },
        [](const auto& each) { return each.first; });
    if (!same) build(counts);
    for (const auto& [value, button] : values_) {
        const auto count = std::ranges::find(counts, value, [](auto& each) { return each.first; });
        button->show_count(count->second);
        button->setChecked(has(chosen, value));
    }
    tell_chosen();
}

void FactSection::build(const Counts& counts) {
    empty_layout(rows_);
    values_.clear();
    for (const auto& [value, count] : counts) {
        auto* button = new FilterValue(shown_value(fact_, value));
        button->setToolTip(button->text());
        rows_->addWidget(button);
        values_.emplace_back(value, button);
        connect(button, &FilterValue::clicked, this, [this] {
            std::vector<std::string> values;
            for (const auto& [each, box] : values_) {
                if (box->isChecked()) values.push_back(each);
            }
            emit chosen(values);
        });
    }
}

void FactSection::tell_chosen() {
    QStringList words;
    for (const auto& [value, button] : values_) {
        if (button->isChecked()) words << button->text();
    }
    head_->show_chosen(words.join(QStringLiteral(", ")));
}

}  // namespace quarterturn
