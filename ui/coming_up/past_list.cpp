#include "ui/coming_up/past_list.h"

#include <QLineEdit>
#include <QLocale>

#include "ui/coming_up/occasion_card.h"
#include "ui/coming_up/occasion_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// While she searches, this many are shown opened; the rest wait for a longer word.
constexpr std::size_t most_found = 20;

std::chrono::year_month month_of(const Occasion& occasion) {
    return occasion.date.year() / occasion.date.month();
}

QString month_title(std::chrono::year_month month) {
    return QLocale().toString(to_qdate(month / std::chrono::day(1)), QStringLiteral("MMMM yyyy"));
}

// "November 2026: 1 wedding, 2 sittings"
QString month_words(std::chrono::year_month month, const std::vector<const Occasion*>& occasions) {
    const auto weddings = static_cast<int>(std::ranges::count_if(
        occasions, [](const Occasion* occasion) { return occasion->is_wedding; }));
    const int sittings = static_cast<int>(occasions.size()) - weddings;
    QStringList counts;
    if (weddings > 0) counts << PastList::tr("%n wedding(s)", nullptr, weddings);
    if (sittings > 0) counts << PastList::tr("%n sitting(s)", nullptr, sittings);
    //: a month, and what there was in it
    return PastList::tr("%1: %2").arg(month_title(month), counts.join(QStringLiteral(", ")));
}

}  // namespace

PastList::PastList(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), search_(new QLineEdit), months_(make_column(3)) {
    search_->setPlaceholderText(tr("Search by name"));
    search_->setAccessibleName(tr("Search what is past by name"));
    search_->setClearButtonEnabled(false);
    search_->setMaximumWidth(space(90));
    connect(search_, &QLineEdit::textChanged, this, &PastList::rebuild);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(3));
    QHBoxLayout* head = make_row(4);
    head->addWidget(make_heading(tr("Past")), 1);
    head->addWidget(search_, 1);
    column->addLayout(head);
    column->addLayout(months_);
}

void PastList::show_past(std::vector<Occasion> past, bool newest_open) {
    past_ = std::move(past);
    if (newest_open && !past_.empty() && !std::exchange(newest_was_opened_, true)) {
        open_.push_back(month_of(past_.front()));
    }
    setVisible(!past_.empty());
    rebuild();
}

bool PastList::matches(const Occasion& occasion) const {
    const QString wanted = search_->text().trimmed();
    if (occasion.wedding &&
        from_utf8(occasion.wedding->name).contains(wanted, Qt::CaseInsensitive)) {
        return true;
    }
    return std::ranges::any_of(occasion.clients, [&](const ClientAhead& client) {
        return from_utf8(client.client.name).contains(wanted, Qt::CaseInsensitive);
    });
}

void PastList::rebuild() {
    empty_layout(months_);
    std::size_t found = 0;
    std::vector<std::pair<Month, std::vector<const Occasion*>>> months;
    for (const Occasion& occasion : past_) {
        if (!matches(occasion)) continue;
        ++found;
        if (months.empty() || months.back().first != month_of(occasion)) {
            months.push_back({month_of(occasion), {}});
        }
        months.back().second.push_back(&occasion);
    }
    const bool searching = !search_->text().trimmed().isEmpty();
    const bool all_open = searching && found <= most_found;
    for (auto& [month, occasions] : months) add_month(month, occasions, all_open);
    if (searching && found == 0) {
        months_->addWidget(make_quiet(tr("Nobody of this name was here before.")));
    }
}

void PastList::add_month(Month month, const std::vector<const Occasion*>& occasions, bool open) {
    open = open || std::ranges::find(open_, month) != open_.end();
    const QString title = month_words(month, occasions);
    QPushButton* head =
        make_quiet_button((open ? QStringLiteral("▾  ") : QStringLiteral("▸  ")) + title);
    head->setAccessibleName(title);
    head->setCheckable(true);
    head->setChecked(open);
    connect(head, &QPushButton::clicked, this, [this, month] { toggle_month(month); });
    months_->addWidget(head, 0, Qt::AlignLeading);
    if (!open) return;
    std::vector<Occasion> judged;
    for (const Occasion* occasion : occasions) judged.push_back(*occasion);
    session_.attempt([&] { judge(session_.library(), judged); });
    for (const Occasion& occasion : judged) {
        auto* card = new OccasionCard(session_, occasion);
        connect(card, &OccasionCard::form_closed, this, &PastList::changed);
        months_->addWidget(card);
    }
}

void PastList::toggle_month(Month month) {
    if (std::erase(open_, month) == 0) open_.push_back(month);
    rebuild();
}

}  // namespace quarterturn
