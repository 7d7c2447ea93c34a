#include "ui/coming_up/ahead_list.h"

#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <span>

#include "ui/coming_up/occasion_card.h"
#include "ui/shell/session.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

// More people than a window of its first size shows.
constexpr std::size_t people_at_once = 8;

}  // namespace

AheadList::AheadList(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(make_column(4)) {
    setLayout(column_);
}

void AheadList::show_ahead(std::vector<Occasion> ahead, Date today) {
    if (std::exchange(today_, today) != today) let_go_of_cards();
    const bool all_at_once = !cards_.empty();
    ahead_ = std::move(ahead);
    judged_ = 0;
    setVisible(!ahead_.empty());
    std::vector<OccasionCard*> cards;
    const std::size_t count = all_at_once ? ahead_.size() : count_at_once();
    judge_next(count);
    for (std::size_t i = 0; i < count; ++i) {
        OccasionCard* kept = take_card_of(ahead_[i]);
        cards.push_back(kept ? kept : make_card_of(ahead_[i]));
    }
    let_go_of_cards();
    cards_ = std::move(cards);
    for (OccasionCard* card : cards_) column_->addWidget(card);
    some_wait_ = count < ahead_.size();
    if (!some_wait_) emit all_shown();
}

void AheadList::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    if (std::exchange(some_wait_, false)) {
        QTimer::singleShot(0, this, &AheadList::add_those_waiting);
    }
}

// Of those that are not judged yet.
std::size_t AheadList::count_at_once() const {
    std::size_t people = 0;
    std::size_t next = judged_;
    for (; next < ahead_.size() && people < people_at_once; ++next) {
        people += std::max<std::size_t>(ahead_[next].clients.size(), 1);
    }
    return next - judged_;
}

void AheadList::judge_next(std::size_t count) {
    judge(session_.library(), std::span(ahead_).subspan(judged_, count));
    judged_ += count;
}

OccasionCard* AheadList::take_card_of(const Occasion& occasion) {
    const auto found = std::ranges::find_if(
        cards_, [&](const OccasionCard* card) { return card->occasion() == occasion; });
    if (found == cards_.end()) return nullptr;
    OccasionCard* card = *found;
    cards_.erase(found);
    column_->removeWidget(card);
    return card;
}

OccasionCard* AheadList::make_card_of(const Occasion& occasion) {
    auto* card = new OccasionCard(session_, occasion);
    connect(card, &OccasionCard::form_closed, this, &AheadList::changed);
    return card;
}

void AheadList::let_go_of_cards() {
    for (OccasionCard* card : std::exchange(cards_, {})) {
        column_->removeWidget(card);
        card->hide();
        card->deleteLater();  // it may be what was clicked
    }
}

// One after the other, so that a key or a click does not wait for all of them.
void AheadList::add_those_waiting() {
    if (cards_.size() >= ahead_.size()) return;
    if (cards_.size() == judged_ && !session_.attempt([this] { judge_next(count_at_once()); })) {
        return;
    }
    cards_.push_back(make_card_of(ahead_[cards_.size()]));
    column_->addWidget(cards_.back());
    if (cards_.size() == ahead_.size()) return emit all_shown();
    QTimer::singleShot(0, this, &AheadList::add_those_waiting);
}

}  // namespace quarterturn
