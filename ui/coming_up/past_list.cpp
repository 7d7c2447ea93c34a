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
// Until she asks for those before.
constexpr std::size_t most_months = 12;

QString month_title(std::chrono::year_month month) {
    return QLocale().toString(to_qdate(month / std::chrono::day(1)), QStringLiteral("MMMM yyyy"));
}

// "November 2026: 1 wedding, 2 sittings"
QString month_words(const MonthCount& month) {
    QStringList counts;
    if (month.weddings > 0) counts << PastList::tr("%n wedding(s)", nullptr, month.weddings);
    if (month.sittings > 0) counts << PastList::tr("%n sitting(s)", nullptr, month.sittings);
    //: a month, and what there was in it
    return PastList::tr("%1: %2").arg(month_title(month.month), counts.join(QStringLiteral(", ")));
}

bool has_name(const Occasion& occasion, const QString& wanted) {
    if (occasion.wedding &&
        from_utf8(occasion.wedding->name).contains(wanted, Qt::CaseInsensitive)) {
        return true;
    }
    return std::ranges::any_of(occasion.clients, [&](const ClientAhead& client) {
        return from_utf8(client.client.name).contains(wanted, Qt::CaseInsensitive);
    });
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

void PastList::show_past(std::vector<MonthCount> past, Date today, bool newest_open) {
    past_ = std::move(past);
    today_ = today;
    if (newest_open && !past_.empty() && !std::exchange(newest_was_opened_, true)) {
        open_.push_back(past_.front().month);
    }
    setVisible(!past_.empty());
    rebuild();
}

void PastList::rebuild() {
    empty_layout(months_);
    session_.attempt(
        [this] { search_->text().trimmed().isEmpty() ? show_months() : show_found(); });
}

void PastList::show_months() {
    const std::size_t shown =
        all_shown_ ? past_.size() : std::min<std::size_t>(past_.size(), most_months);
    for (std::size_t i = 0; i < shown; ++i) {
        const bool open = is_open(past_[i].month);
        add_month(past_[i], open);
        if (open) add_cards(occasions_of(past_[i].month));
    }
    const int more = static_cast<int>(past_.size() - shown);
    if (more == 0) return;
    QPushButton* rest = make_quiet_button(tr("Show %n earlier month(s)", nullptr, more));
    connect(rest, &QPushButton::clicked, this, [this] {
        all_shown_ = true;
        rebuild();
    });
    months_->addWidget(rest, 0, Qt::AlignLeading);
}

void PastList::show_found() {
    const std::vector<Occasion> all = found();
    if (all.empty()) {
        months_->addWidget(make_quiet(tr("Nobody of this name was here before.")));
    }
    for (auto next = all.begin(); next != all.end();) {
        MonthCount month{next->date.year() / next->date.month()};
        std::vector<Occasion> occasions;
        for (; next != all.end() && next->date.year() / next->date.month() == month.month; ++next) {
            ++(next->is_wedding ? month.weddings : month.sittings);
            occasions.push_back(*next);
        }
        const bool open = all.size() <= most_found || is_open(month.month);
        add_month(month, open);
        if (open) add_cards(std::move(occasions));
    }
}

std::vector<Occasion> PastList::occasions_of(Month month) const {
    const Date next = (month + std::chrono::months(1)) / std::chrono::day(1);
    return past_occasions(session_.library(),
                          {.first = month / std::chrono::day(1), .end = std::min(next, today_)});
}

std::vector<Occasion> PastList::found() const {
    const QString wanted = search_->text().trimmed();
    std::vector<Occasion> found = past_occasions(session_.library(), {.end = today_});
    std::erase_if(found, [&](const Occasion& occasion) { return !has_name(occasion, wanted); });
    return found;
}

bool PastList::is_open(Month month) const {
    return std::ranges::find(open_, month) != open_.end();
}

void PastList::add_month(const MonthCount& month, bool open) {
    const QString title = month_words(month);
    QPushButton* head =
        make_quiet_button((open ? QStringLiteral("▾  ") : QStringLiteral("▸  ")) + title);
    head->setAccessibleName(title);
    head->setCheckable(true);
    head->setChecked(open);
    connect(head, &QPushButton::clicked, this, [this, of = month.month] { toggle_month(of); });
    months_->addWidget(head, 0, Qt::AlignLeading);
}

void PastList::add_cards(std::vector<Occasion> occasions) {
    judge(session_.library(), occasions);
    for (const Occasion& occasion : occasions) {
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
