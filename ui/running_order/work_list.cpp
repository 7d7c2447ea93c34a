#include "ui/running_order/work_list.h"

#include <QGridLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString time_of(int minute) {
    return from_utf8(minute_text(minute));
}

// "07:10 set, 08:20 finish"
QString parts_shown(const WeddingMorning& morning, const MorningPlan& plan, ClientId client) {
    QStringList parts;
    for (const Seat& seat : plan.seats) {
        if (seat.client != client) continue;
        parts << WorkList::tr("%1 %2").arg(time_of(seat.begins),
                                           from_utf8(task_word(morning.needs, seat)));
    }
    return parts.join(QStringLiteral(",  "));
}

int stylist_of(const MorningPlan& plan, ClientId client) {
    return std::ranges::find(plan.seats, client, &Seat::client)->stylist;
}

QString role_and_stylist(const WeddingMorning& morning, const MorningPlan& plan, ClientId client) {
    QStringList words;
    for (const PartyMember& member : morning.wedding.party) {
        if (member.client == client && !member.role.empty()) words << from_utf8(member.role);
    }
    if (morning.needs.stylists.size() > 1) {
        words << WorkList::tr("stylist %1").arg(stylist_of(plan, client) + 1);
    }
    return words.join(QStringLiteral("  ·  "));
}

QString readiness(const MorningPlan& plan, const MorningClient& client, int late) {
    const int ends = ready_at(client.client, plan.seats).value_or(0);
    if (late == 0) return WorkList::tr("ready at %1").arg(time_of(ends));
    return WorkList::tr("▲ ready at %1, %n minute(s) late", nullptr, late).arg(time_of(ends));
}

}  // namespace

WorkList::WorkList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(space(4));
    grid_->setVerticalSpacing(space(1));
    grid_->setColumnStretch(0, 4);
    grid_->setColumnStretch(1, 3);
    grid_->setColumnStretch(2, 2);
    grid_->setColumnStretch(3, 3);
}

void WorkList::show_plan(const WeddingMorning& morning, const MorningPlan& plan) {
    empty_layout(grid_);
    rows_ = 0;
    std::vector<ClientId> shown;
    for (const Seat& seat : plan.seats) {
        if (std::ranges::count(shown, seat.client) > 0) continue;
        shown.push_back(seat.client);
        add_row(morning, plan, seat.client);
    }
}

void WorkList::add_row(const WeddingMorning& morning, const MorningPlan& plan, ClientId client) {
    const auto& clients = morning.needs.clients;
    const auto found = std::ranges::find(clients, client, &MorningClient::client);
    const int late = plan.consequences.late[static_cast<std::size_t>(found - clients.begin())];
    if (rows_ > 0) grid_->addWidget(make_hairline(), rows_++, 0, 1, 4);
    auto* name = new SentenceLink(from_utf8(found->name));
    name->setAccessibleName(tr("What %1 needs").arg(name->text()));
    connect(name, &SentenceLink::clicked, this, [this, client] { emit chosen(client); });
    auto* who = make_column(0);
    who->addWidget(name);
    const QString about = role_and_stylist(morning, plan, client);
    if (!about.isEmpty()) {
        QLabel* label = make_quiet(about);
        label->setContentsMargins(space(5), 0, 0, 0);  // under the name, past the link's arrow
        who->addWidget(label);
    }
    grid_->addLayout(who, rows_, 0);
    grid_->addWidget(make_text(parts_shown(morning, plan, client)), rows_, 1);
    grid_->addWidget(make_quiet(tr("ready by %1").arg(time_of(found->ready_by))), rows_, 2);
    QLabel* ready = make_text(readiness(plan, *found, late));
    if (late > 0) {
        QFont bold = ready->font();
        bold.setBold(true);
        ready->setFont(bold);
    }
    grid_->addWidget(ready, rows_++, 3);
}

}  // namespace quarterturn
