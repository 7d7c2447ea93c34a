#include "ui/coming_up/past_list.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QScrollBar>
#include <QTimer>

#include "ui/coming_up/occasion_card.h"
#include "ui/coming_up/occasion_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// While she searches, this many are shown opened; the rest wait for a longer word.
constexpr std::size_t most_found = 20;
// Until she asks for those before.
constexpr std::size_t most_months = 12;
constexpr int pause_in_typing_ms = 200;  // common practice

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
    : QWidget(parent),
      session_(session),
      search_(new QLineEdit),
      typing_(new QTimer(this)),
      months_(make_column(3)) {
    search_->setPlaceholderText(tr("Search by name"));
    search_->setAccessibleName(tr("Search what is past by name"));
    search_->setClearButtonEnabled(false);
    search_->setMaximumWidth(space(90));
    typing_->setSingleShot(true);
    typing_->setInterval(pause_in_typing_ms);
    connect(search_, &QLineEdit::textChanged, typing_, qOverload<>(&QTimer::start));
    connect(search_, &QLineEdit::returnPressed, this, &PastList::rebuild);
    connect(typing_, &QTimer::timeout, this, &PastList::rebuild);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(3));
    QHBoxLayout* head = make_row(4);
    head->addWidget(make_heading(tr("Past")), 1);
    head->addWidget(search_, 1);
    column->addLayout(head);
    column->addLayout(months_);
    column->addStretch();
    hide();  // until it is known what is past
}

void PastList::show_past(std::vector<MonthCount> past, Date today, bool newest_open) {
    past_ = std::move(past);
    today_ = today;
    everything_.reset();
    if (newest_open && !past_.empty() && !std::exchange(newest_was_opened_, true)) {
        open_.push_back(past_.front().month);
    }
    setVisible(!past_.empty());
    rebuild();
}

QString PastList::wanted() const {
    return search_->text().trimmed();
}

void PastList::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || wanted().isEmpty()) {
        return QWidget::keyPressEvent(event);
    }
    search_->clear();
    rebuild();
}

// What is the same as before stays, and the keyboard with it.
void PastList::rebuild() {
    typing_->stop();
    make_room();
    while (QLayoutItem* item = months_->takeAt(0)) {
        before_ << item->widget();
        delete item;
    }
    session_.attempt([this] { wanted().isEmpty() ? show_months() : show_found(); });
    for (QWidget* gone : std::exchange(before_, {})) {
        std::erase_if(heads_, [gone](const auto& head) { return head.second == gone; });
        gone->hide();
        gone->deleteLater();  // it may be what was clicked
    }
    show_what_is_found();
}

// While she searches, the page is long enough below the field for it to stay where it is, however
// little is found.
void PastList::make_room() {
    QScrollArea* page = page_around(*this);
    if (!page) return;
    const bool searches = search_->hasFocus() || !wanted().isEmpty();
    setMinimumHeight(searches ? page->viewport()->height() : 0);
}

// What is found lies in sight below the field, once all of it was laid out.
void PastList::show_what_is_found() {
    QScrollArea* page = page_around(*this);
    if (!page || wanted().isEmpty() || !search_->hasFocus()) return;
    QTimer::singleShot(0, this, [this, page] {
        lay_out_now(*page);
        QScrollBar* bar = page->verticalScrollBar();
        const int field = search_->mapTo(page->widget(), QPoint()).y();
        bar->setValue(std::max(bar->value(), field - page->viewport()->height() / 3));
    });
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
    connect(rest, &QPushButton::clicked, this, [this, first = past_[shown].month] {
        all_shown_ = true;
        rebuild();
        if (QPushButton* head = heads_[first]) head->setFocus(Qt::OtherFocusReason);
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

std::vector<Occasion> PastList::found() {
    if (!everything_) everything_ = past_occasions(session_.library(), {.end = today_});
    std::vector<Occasion> found;
    std::ranges::copy_if(
        *everything_, std::back_inserter(found),
        [name = wanted()](const Occasion& occasion) { return has_name(occasion, name); });
    return found;
}

bool PastList::is_open(Month month) const {
    return std::ranges::find(open_, month) != open_.end();
}

QPushButton* PastList::head_of(Month month) {
    QPushButton*& head = heads_[month];
    if (!head) {
        head = make_quiet_button({});
        head->setCheckable(true);
        connect(head, &QPushButton::clicked, this, [this, month] { toggle_month(month); });
    }
    before_.removeOne(head);
    return head;
}

void PastList::add_month(const MonthCount& month, bool open) {
    const QString title = month_words(month);
    QPushButton* head = head_of(month.month);
    head->setText((open ? QStringLiteral("▾  ") : QStringLiteral("▸  ")) + title);
    head->setAccessibleName(title);
    head->setChecked(open);
    months_->addWidget(head, 0, Qt::AlignLeading);
}

OccasionCard* PastList::card_of(const Occasion& occasion) {
    for (QWidget* widget : before_) {
        auto* card = qobject_cast<OccasionCard*>(widget);
        if (!card || card->occasion() != occasion) continue;
        before_.removeOne(widget);
        return card;
    }
    auto* card = new OccasionCard(session_, occasion);
    connect(card, &OccasionCard::form_closed, this, &PastList::changed);
    return card;
}

void PastList::add_cards(std::vector<Occasion> occasions) {
    judge(session_.library(), occasions);
    for (const Occasion& occasion : occasions) months_->addWidget(card_of(occasion));
}

void PastList::toggle_month(Month month) {
    if (std::erase(open_, month) == 0) open_.push_back(month);
    rebuild();
}

}  // namespace quarterturn
