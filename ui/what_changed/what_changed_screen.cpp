#include "ui/what_changed/what_changed_screen.h"

#include <QComboBox>
#include <QScrollArea>
#include <QStackedWidget>

#include "ui/look_choice/look_choice.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/what_changed/comparison.h"
#include "ui/what_changed/moment_words.h"
#include "ui/what_changed/photo_pairs.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int least_letters = 20;

QString words_without_two(bool one) {
    return one ? WhatChangedScreen::tr(
                     "There is one recipe of this client so far. Once it is saved again, at the "
                     "next trial or on the wedding day, both stand here side by side, with the "
                     "photos of the same angle.")
               : WhatChangedScreen::tr(
                     "This look has no recipe yet. Each time one is saved it is kept, and what "
                     "changed since the time before is told here.");
}

}  // namespace

WhatChangedScreen::WhatChangedScreen(Session& session)
    : session_(session),
      pages_(new QStackedWidget),
      empty_(new EmptyPage(tr("Here two recipes stand side by side, with what changed between the "
                              "trial and the wedding day. There is no look yet: it is added to a "
                              "client."),
                           tr("See what's coming up"))) {
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    page_ = build_page();
    pages_->addWidget(empty_);
    pages_->addWidget(page_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QString WhatChangedScreen::help() const {
    return tr(
        "Choose two recipes of one client: two that were saved one after the other, those of two "
        "trials, of a trial and the wedding day, or of two of her looks. What left is struck "
        "through, what came is underlined and bold. What stayed is folded below.\n"
        "Beneath stand the photos of the same angle, the earlier ones first; a click on one leads "
        "to it.");
}

QWidget* WhatChangedScreen::build_page() {
    const ScrollingPage page = make_scrolling_page();
    looks_ = new LookChoice(session_);
    connect(looks_, &LookChoice::chosen, this, [this](LookId look) {
        session_.choose_look(look);
        session_.attempt([this] { refresh(); });
    });
    page.column->addWidget(looks_);
    choices_ = build_choices();
    page.column->addWidget(choices_);
    const Card waiting = make_card();
    waiting_ = waiting.frame;
    sentence_ = make_text({});
    waiting.column->addWidget(make_heading(tr("Nothing to set side by side yet")));
    waiting.column->addWidget(sentence_);
    QPushButton* open = make_next_button(tr("Open the recipe"));
    connect(open, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::recipe, .look = look_}); });
    waiting.column->addWidget(open, 0, Qt::AlignLeading);
    page.column->addWidget(waiting_);
    const Card recipes = make_card();
    recipes_ = recipes.frame;
    comparison_ = new Comparison;
    recipes.column->addWidget(comparison_);
    page.column->addWidget(recipes_);
    const Card photos = make_card();
    photos_ = photos.frame;
    pairs_ = new PhotoPairs(session_);
    photos.column->addWidget(make_heading(tr("The photos of the same angle")));
    photos.column->addWidget(pairs_);
    page.column->addWidget(photos_);
    page.column->addStretch();
    return page.scroll;
}

QWidget* WhatChangedScreen::build_choices() {
    auto* choices = new QWidget;
    auto* row = new QHBoxLayout(choices);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(4));
    then_ = add_choice(*row, tr("Then"));
    now_ = add_choice(*row, tr("Now"));
    connect(then_, &QComboBox::activated, this, [this](int place) { choose(was_, place); });
    connect(now_, &QComboBox::activated, this, [this](int place) { choose(is_, place); });
    QPushButton* swap = make_quiet_button(tr("The other way round"));
    connect(swap, &QPushButton::clicked, this, [this] {
        std::swap(was_, is_);
        session_.attempt([this] { show_choices(); });
    });
    row->addWidget(swap, 0, Qt::AlignBottom);
    return choices;
}

QComboBox* WhatChangedScreen::add_choice(QHBoxLayout& row, const QString& name) {
    QVBoxLayout* column = make_column(1);
    column->addWidget(make_quiet(name));
    auto* choice = new QComboBox;
    choice->setAccessibleName(name);
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(least_letters);
    choice->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    column->addWidget(choice);
    row.addLayout(column, 1);
    return choice;
}

void WhatChangedScreen::arrive(const Place& place) {
    if (place.look) session_.choose_look(place.look);
}

void WhatChangedScreen::refresh() {
    const auto look = likely_look(session_);
    pages_->setCurrentWidget(look ? page_ : static_cast<QWidget*>(empty_));
    looks_->show_looks(look);
    if (look) find_moments(*look);
}

void WhatChangedScreen::find_moments(LookId look) {
    Library& library = session_.library();
    moments_ = recipe_moments(library, library.looks().find(look)->client);
    const bool other_look = std::exchange(look_, look) != look;
    was_ = still_there(was_);
    is_ = still_there(is_);
    if (other_look || !was_ || !is_) {
        const auto likely = likely_pair(moments_, look);
        was_ = likely ? std::optional(moments_[likely->was]) : std::nullopt;
        is_ = likely ? std::optional(moments_[likely->is]) : std::nullopt;
    }
    show_choices();
}

std::optional<RecipeMoment> WhatChangedScreen::still_there(
    const std::optional<RecipeMoment>& chosen) const {
    for (const RecipeMoment& moment : moments_) {
        if (chosen && moment.is(*chosen)) return moment;
    }
    return std::nullopt;
}

void WhatChangedScreen::choose(std::optional<RecipeMoment>& side, int place) {
    side = moments_.at(static_cast<std::size_t>(place));
    session_.attempt([this] { show_comparison(); });
}

void WhatChangedScreen::show_choices() {
    show_choice(*then_, was_);
    show_choice(*now_, is_);
    show_comparison();
}

void WhatChangedScreen::show_choice(QComboBox& choice, const std::optional<RecipeMoment>& side) {
    choice.clear();
    int current = -1;
    for (const RecipeMoment& moment : moments_) {
        if (side && moment.is(*side)) current = choice.count();
        choice.addItem(moment_words(moment));
    }
    choice.setCurrentIndex(current);
}

void WhatChangedScreen::show_comparison() {
    const bool two = was_ && is_;
    choices_->setVisible(two);
    waiting_->setVisible(!two);
    recipes_->setVisible(two);
    if (two) return compare(*was_, *is_);
    const bool one = std::any_of(moments_.begin(), moments_.end(),
                                 [this](const auto& moment) { return moment.look.id == look_; });
    sentence_->setText(words_without_two(one));
    photos_->hide();
}

void WhatChangedScreen::compare(const RecipeMoment& was, const RecipeMoment& is) {
    comparison_->show_moments(was, is);
    const auto pairs = angle_pairs(session_.library(), was, is);
    pairs_->show_pairs(pairs);
    photos_->setVisible(!pairs.empty());
}

}  // namespace quarterturn
