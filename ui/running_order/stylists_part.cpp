#include "ui/running_order/stylists_part.h"

#include <QSpinBox>

#include "ui/running_order/time_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int usual_break = 15;
constexpr int before_a_break = 120;  // worked, usually

Break next_break(const StylistHours& hours) {
    int begins = hours.arrives + before_a_break;
    for (const Break& pause : hours.breaks) {
        begins = std::max(begins, pause.ends + before_a_break);
    }
    begins = std::min(begins, 23 * 60);
    return {begins, begins + usual_break};
}

}  // namespace

StylistsPart::StylistsPart(QWidget* parent)
    : QWidget(parent), count_(new QSpinBox), rows_(make_column(2)) {
    count_->setRange(1, most_stylists);
    count_->setAccessibleName(tr("Number of stylists"));
    count_->setKeyboardTracking(false);
    count_->setMinimumWidth(space(18));
    connect(count_, &QSpinBox::valueChanged, this, &StylistsPart::set_count);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    QHBoxLayout* row = make_row(2);
    row->addWidget(make_heading(tr("Stylists")), 1);
    row->addWidget(count_);
    column->addLayout(row);
    column->addLayout(rows_);
}

void StylistsPart::show_stylists(const std::vector<StylistHours>& stylists) {
    stylists_ = stylists;
    const QSignalBlocker quiet(count_);
    count_->setMinimumHeight(TimeWords(QString()).sizeHint().height());
    count_->setValue(static_cast<int>(stylists.size()));
    if (!same_rows()) build_rows();
    fill_rows();
}

// Fields that stay keep the keyboard.
bool StylistsPart::same_rows() const {
    return std::ranges::equal(
        fields_, stylists_, {}, [](const StylistFields& fields) { return fields.breaks.size(); },
        [](const StylistHours& hours) { return hours.breaks.size(); });
}

void StylistsPart::build_rows() {
    empty_layout(rows_);
    fields_.clear();
    for (std::size_t i = 0; i < stylists_.size(); ++i) add_stylist(i);
}

TimeWords* StylistsPart::make_time(const QString& name, const Minute& value) {
    auto* field = new TimeWords(name);
    connect(field, &TimeWords::not_understood, this, &StylistsPart::not_understood);
    connect(field, &TimeWords::given, this, [this, value](std::optional<int> minute) {
        auto changed_hours = stylists_;
        if (minute) value(changed_hours) = *minute;
        keep(std::move(changed_hours));
    });
    return field;
}

void StylistsPart::add_stylist(std::size_t stylist) {
    const QString name = tr("Stylist %1").arg(stylist + 1);
    QHBoxLayout* row = make_row(2);
    row->addWidget(make_text(tr("%1 comes at").arg(name)), 1);
    TimeWords* arrives = make_time(tr("%1 comes at").arg(name), [stylist](auto& hours) -> int& {
        return hours[stylist].arrives;
    });
    row->addWidget(arrives, 1);
    fields_.push_back({arrives, {}});
    rows_->addLayout(row);
    for (std::size_t i = 0; i < stylists_[stylist].breaks.size(); ++i) add_break_row(stylist, i);
    QPushButton* more = make_quiet_button(tr("Add a break"));
    more->setAccessibleName(tr("Add a break for stylist %1").arg(stylist + 1));
    connect(more, &QPushButton::clicked, this, [this, stylist] { add_break(stylist); });
    rows_->addWidget(more, 0, Qt::AlignLeading);
}

void StylistsPart::add_break_row(std::size_t stylist, std::size_t number) {
    QHBoxLayout* row = make_row(1);
    const QString whose = tr("of stylist %1").arg(stylist + 1);
    TimeWords* begins = make_time(tr("Begin of a break %1").arg(whose), [=](auto& hours) -> int& {
        return hours[stylist].breaks[number].begins;
    });
    TimeWords* ends = make_time(tr("End of a break %1").arg(whose), [=](auto& hours) -> int& {
        return hours[stylist].breaks[number].ends;
    });
    QPushButton* gone = make_quiet_button(tr("Take out"));
    gone->setAccessibleName(tr("Take out a break %1").arg(whose));
    connect(gone, &QPushButton::clicked, this,
            [this, stylist, number] { remove_break(stylist, number); });
    row->addWidget(begins, 1);
    row->addWidget(make_quiet(QStringLiteral("–")));
    row->addWidget(ends, 1);
    row->addWidget(gone);
    fields_.back().breaks.push_back({begins, ends});
    rows_->addLayout(row);
}

void StylistsPart::fill_rows() {
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        fields_[i].arrives->show_time(stylists_[i].arrives, {});
        for (std::size_t k = 0; k < fields_[i].breaks.size(); ++k) {
            fields_[i].breaks[k].begins->show_time(stylists_[i].breaks[k].begins, {});
            fields_[i].breaks[k].ends->show_time(stylists_[i].breaks[k].ends, {});
        }
    }
}

void StylistsPart::set_count(int count) {
    auto stylists = stylists_;
    stylists.resize(static_cast<std::size_t>(count), stylists.back());
    keep(std::move(stylists));
}

void StylistsPart::add_break(std::size_t stylist) {
    auto stylists = stylists_;
    stylists[stylist].breaks.push_back(next_break(stylists[stylist]));
    keep(std::move(stylists));
    if (!fields_[stylist].breaks.empty()) fields_[stylist].breaks.back().begins->setFocus();
}

void StylistsPart::remove_break(std::size_t stylist, std::size_t number) {
    auto stylists = stylists_;
    auto& breaks = stylists[stylist].breaks;
    breaks.erase(breaks.begin() + static_cast<std::ptrdiff_t>(number));
    keep(std::move(stylists));
}

void StylistsPart::keep(std::vector<StylistHours> stylists) {
    for (const StylistHours& hours : stylists) {
        for (const Break& pause : hours.breaks) {
            if (pause.begins < pause.ends) continue;
            emit not_understood(tr("The break ends before it begins."));
            return;
        }
    }
    if (stylists == stylists_) return fill_rows();
    emit changed(stylists);
}

}  // namespace quarterturn
