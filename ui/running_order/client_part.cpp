#include "ui/running_order/client_part.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSpinBox>

#include "ui/running_order/time_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int longest_part = 12 * 60;

template <class Minutes>
ChairWork work_in(const Minutes& fields) {
    ChairWork work{.before = fields[0]->value()};
    if (fields[3]->value() == 0) return work;
    work.after = fields[3]->value();
    work.cooling = fields[1]->value();
    const int left = fields[2]->value();
    work.may_be_left = std::max(work.cooling, left == 0 ? usual_may_be_left : left);
    return work;
}

QVBoxLayout* named(const QString& name, QWidget* field) {
    QVBoxLayout* column = make_column(1);
    column->addWidget(make_quiet(name));
    column->addWidget(field);
    return column;
}

}  // namespace

ClientPart::ClientPart(QWidget* parent) : QWidget(parent) {
    build();
}

void ClientPart::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(make_heading(tr("What she needs")));
    clients_ = new QComboBox;
    clients_->setAccessibleName(tr("Client"));
    clients_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(clients_, &QComboBox::activated, this, &ClientPart::show_client);
    column->addWidget(clients_);
    column->addLayout(build_times());
    first_ = make_order_box(tr("Nobody is begun before her"), &MorningWish::first);
    last_ = make_order_box(tr("Nobody is ready after her"), &MorningWish::last);
    column->addWidget(first_);
    column->addWidget(last_);
    column->addLayout(build_minutes());
    as_recipe_ = make_quiet_button(tr("Minutes as in her recipe"));
    connect(as_recipe_, &QPushButton::clicked, this,
            [this] { change([](Morning&, MorningWish& wish) { wish.work.reset(); }); });
    column->addWidget(as_recipe_, 0, Qt::AlignLeading);
}

QLayout* ClientPart::build_times() {
    ready_by_ = make_time(tr("Ready by"), &MorningWish::ready_by);
    comes_ = make_time(tr("Comes at"), &MorningWish::arrives);
    QHBoxLayout* row = make_row(2);
    row->addLayout(named(tr("Ready by"), ready_by_), 1);
    row->addLayout(named(tr("Comes at"), comes_), 1);
    return row;
}

QLayout* ClientPart::build_minutes() {
    const std::array names{tr("Set, or all"), tr("Cools"), tr("May be left"), tr("Finish")};
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space(2));
    grid->setVerticalSpacing(space(1));
    for (std::size_t i = 0; i < names.size(); ++i) {
        auto* field = new QSpinBox;
        field->setRange(0, longest_part);
        field->setSingleStep(5);
        field->setSpecialValueText(QStringLiteral("–"));
        field->setSuffix(tr(" min"));
        field->setKeyboardTracking(false);
        field->setAccessibleName(tr("Minutes: %1").arg(names[i]));
        field->setMinimumHeight(clients_->sizeHint().height());
        connect(field, &QSpinBox::valueChanged, this, &ClientPart::take_minutes);
        minutes_[i] = field;
        const int place = static_cast<int>(i);
        grid->addLayout(named(names[i], field), place / 2, place % 2);
    }
    return grid;
}

QCheckBox* ClientPart::make_order_box(const QString& words, bool MorningWish::*order) {
    auto* box = new QCheckBox(words);
    box->setMinimumHeight(least_target);
    connect(box, &QCheckBox::clicked, this, [this, order](bool checked) {
        change([=](Morning& morning, MorningWish& wish) {
            for (MorningWish& other : morning.wishes) other.*order = false;
            wish.*order = checked;
        });
    });
    return box;
}

TimeWords* ClientPart::make_time(const QString& name, std::optional<int> MorningWish::*time) {
    auto* field = new TimeWords(name);
    connect(field, &TimeWords::not_understood, this, &ClientPart::not_understood);
    connect(field, &TimeWords::given, this, [this, time](std::optional<int> minute) {
        change([=](Morning&, MorningWish& wish) { wish.*time = minute; });
    });
    return field;
}

void ClientPart::show_morning(const WeddingMorning& morning, const QStringList& names) {
    const bool same_wedding = morning.wedding.id == morning_.wedding.id;
    const int chosen = same_wedding ? std::max(0, clients_->currentIndex()) : 0;
    morning_ = morning;
    clients_->clear();
    for (const QString& name : names) clients_->addItem(name);
    clients_->setCurrentIndex(std::min(chosen, clients_->count() - 1));
    setVisible(clients_->count() > 0);
    if (clients_->count() > 0) show_client();
}

void ClientPart::choose(ClientId client) {
    const auto& party = morning_.wedding.party;
    const auto found = std::ranges::find(party, client, &PartyMember::client);
    clients_->setCurrentIndex(static_cast<int>(found - party.begin()));
    show_client();
}

void ClientPart::show_client() {
    const ClientId client =
        morning_.wedding.party[static_cast<std::size_t>(clients_->currentIndex())].client;
    Morning said = morning_.morning;
    const MorningWish wish = wish_of(said, client);
    const QString usual = from_utf8(morning_.wedding.ready_by);
    ready_by_->show_time(wish.ready_by, usual.isEmpty() ? tr("not agreed") : usual);
    comes_->show_time(wish.arrives, tr("any time"));
    first_->setChecked(wish.first);
    last_->setChecked(wish.last);
    const auto planned = std::ranges::find(morning_.needs.clients, client, &MorningClient::client);
    const bool is_planned = planned != morning_.needs.clients.end();
    show_work(wish.work || !is_planned ? wish.work : planned->work);
    as_recipe_->setVisible(wish.work.has_value());
}

void ClientPart::show_work(const std::optional<ChairWork>& work) {
    const ChairWork shown = work.value_or(ChairWork{});
    const std::array values{shown.before, shown.cooling, shown.may_be_left, shown.after};
    for (std::size_t i = 0; i < values.size(); ++i) {
        const QSignalBlocker quiet(minutes_[i]);
        minutes_[i]->setValue(values[i]);
        minutes_[i]->setEnabled(i == 0 || i == 3 || shown.in_two_parts());
    }
}

void ClientPart::change(const std::function<void(Morning&, MorningWish&)>& how) {
    Morning after = morning_.morning;
    const ClientId client =
        morning_.wedding.party[static_cast<std::size_t>(clients_->currentIndex())].client;
    how(after, wish_of(after, client));
    emit changed(after, clients_->currentText());
}

void ClientPart::take_minutes() {
    const ChairWork work = work_in(minutes_);
    if (work.before == 0 && work.in_two_parts()) return;  // she is not done yet
    change([&](Morning&, MorningWish& wish) {
        wish.work = work.before > 0 ? std::optional(work) : std::nullopt;
    });
}

}  // namespace quarterturn
