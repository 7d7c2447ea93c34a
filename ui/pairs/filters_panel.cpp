#include "ui/pairs/filters_panel.h"

#include <QCheckBox>
#include <algorithm>

#include "indexer/rules/pair_facts.h"
#include "ui/pairs/fact_section.h"
#include "ui/pairs/pair_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choice_list.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/reason_field.h"
#include "ui/widgets/words.h"

namespace quarterturn {

FiltersPanel::FiltersPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), refused_(new QCheckBox(tr("Only those I refused"))) {
    auto* column = new QVBoxLayout(this);
    set_reading_margins(*column, 0, 0, space(3), 0);
    column->setSpacing(0);
    add_kept(*column);
    for (const Fact fact : all_facts) {
        auto* section = new FactSection(fact);
        section->open(fact == Fact::family || fact == Fact::angle);
        connect(section, &FactSection::chosen, this,
                [this, fact](const std::vector<std::string>& values) {
                    PairFilter filter = filter_;
                    filter.values[fact] = values;
                    if (values.empty()) filter.values.erase(fact);
                    emit changed(filter);
                });
        sections_[fact] = section;
        column->addWidget(section);
    }
    column->addSpacing(space(2));
    column->addWidget(refused_);
    connect(refused_, &QCheckBox::clicked, this, [this](bool only) {
        PairFilter filter = filter_;
        filter.refused = only;
        emit changed(filter);
    });
    column->addStretch();
}

void FiltersPanel::add_kept(QVBoxLayout& column) {
    choose_ = make_button({});
    keep_ = make_button(tr("Keep this filter…"));
    forget_ = make_quiet_button({});
    name_ = new ReasonField(tr("What do you call this filter?"), tr("Keep it"));
    connect(choose_, &QPushButton::clicked, this, &FiltersPanel::choose_kept);
    connect(keep_, &QPushButton::clicked, name_, &ReasonField::ask);
    connect(forget_, &QPushButton::clicked, this, &FiltersPanel::forget);
    connect(name_, &ReasonField::given, this, &FiltersPanel::keep_as);
    for (QPushButton* button : {choose_, keep_, forget_}) {
        column.addWidget(button);
        column.addSpacing(space(1));
    }
    column.addWidget(name_);
}

void FiltersPanel::show_filter(const PairFilter& filter, const FactCounts& counts) {
    filter_ = filter;
    for (const auto& [fact, section] : sections_) {
        const auto own = counts.find(fact);
        const auto chosen = filter.values.find(fact);
        section->show_values(
            own == counts.end() ? FactSection::Counts{} : in_reading_order(fact, own->second),
            chosen == filter.values.end() ? std::vector<std::string>{} : chosen->second);
    }
    refused_->setChecked(filter.refused);
    show_kept();
}

void FiltersPanel::show_kept() {
    kept_ = session_.library().pair_filters().all();
    const auto own = std::ranges::find(kept_, filter_, &KeptPairFilter::filter);
    const bool is_kept = own != kept_.end();
    choose_->setVisible(!kept_.empty());
    QString name = is_kept ? isolated(from_utf8(own->name)) : tr("Kept filters");
    name.replace(u'&', QLatin1String("&&"));  // one alone would mark a key
    choose_->setText(name + QStringLiteral("  ▾"));
    keep_->setVisible(!is_kept && filter_ != PairFilter{});
    forget_->setVisible(is_kept);
    if (is_kept) {
        forget_->setText(tr("Forget this filter"));
        forget_->setAccessibleName(tr("Forget the filter %1").arg(from_utf8(own->name)));
    }
    if (!keep_->isVisibleTo(this)) name_->hide();
}

void FiltersPanel::choose_kept() {
    QStringList names;
    for (const KeptPairFilter& kept : kept_) names << from_utf8(kept.name);
    auto* list = new ChoiceList(tr("Kept filters"), names, this);
    connect(list, &ChoiceList::chosen, this,
            [this](int entry) { emit changed(kept_.at(static_cast<std::size_t>(entry)).filter); });
    list->open_below(*choose_);
}

void FiltersPanel::keep_as(const QString& name) {
    session_.attempt([&] {
        session_.change_records(keep_filter({to_utf8(name.simplified()), filter_}));
    });
}

void FiltersPanel::forget() {
    const auto own = std::ranges::find(kept_, filter_, &KeptPairFilter::filter);
    if (own == kept_.end()) return;
    session_.attempt([&] { session_.change_records(forget_filter(own->name)); });
}

}  // namespace quarterturn
