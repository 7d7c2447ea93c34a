#include "ui/pairs/wall_page.h"

#include <QLineEdit>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <set>

#include "ui/pairs/filters_panel.h"
#include "ui/pairs/like_bar.h"
#include "ui/pairs/wall_of_pairs.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int pause_in_typing_ms = 150;  // common practice
constexpr int side_steps = 62;
constexpr int words_steps = 64;

}  // namespace

WallPage::WallPage(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent)
    : QWidget(parent),
      session_(session),
      pairs_(pairs),
      filters_(new FiltersPanel(session)),
      side_(make_scrolling_side(filters_)),
      like_bar_(new LikeBar),
      notice_(new Notice),
      lost_(new Notice),
      results_(new PageStack),
      view_(new WallOfPairs(session, pairs, laid)),
      nothing_(new EmptyPage(tr("No pair has all of this. Take something away, or see them all."),
                             tr("Show all pairs"))),
      nothing_like_(new EmptyPage(tr("Nothing of yours can be compared with it yet: there is no "
                                     "pair of this kind."),
                                  tr("Show all pairs"))),
      typing_(new QTimer(this)) {
    typing_->setSingleShot(true);
    typing_->setInterval(pause_in_typing_ms);
    connect(typing_, &QTimer::timeout, this, [this] { take_with_words(filter_); });
    connect(filters_, &FiltersPanel::changed, this, [this](const PairFilter& filter) {
        typing_->isActive() ? take_with_words(filter) : take(filter);
    });
    connect(view_, &WallOfPairs::picked, this, &WallPage::opened);
    for (EmptyPage* nothing : {nothing_, nothing_like_}) {
        connect(nothing, &EmptyPage::started, this, &WallPage::show_all);
    }
    connect(like_bar_, &LikeBar::left, this, &WallPage::leave_like);
    like_bar_->hide();
    side_->setFixedWidth(space(side_steps));
    results_->addWidget(view_);
    results_->addWidget(nothing_);
    results_->addWidget(nothing_like_);
    auto* main = make_column(3);
    main->addWidget(build_header());
    main->addWidget(notice_);
    main->addWidget(lost_);
    main->addWidget(like_bar_);
    main->addWidget(results_, 1);
    auto* row = new QHBoxLayout(this);
    set_reading_margins(*row, space(6), space(3), space(2), 0);
    row->setSpacing(space(5));
    row->addWidget(side_);
    row->addLayout(main, 1);
}

QWidget* WallPage::build_header() {
    words_ = new QLineEdit;
    words_->setPlaceholderText(tr("Search names, notes and recipes"));
    words_->setAccessibleName(tr("Search names, notes and recipes"));
    words_->setMinimumWidth(space(words_steps));
    connect(words_, &QLineEdit::textEdited, typing_, qOverload<>(&QTimer::start));
    connect(words_, &QLineEdit::returnPressed, this, [this] {
        take_with_words(filter_);
        if (pairs_.rowCount() > 0) view_->setFocus();
    });
    count_ = make_quiet({});
    count_->setWordWrap(false);
    clear_ = make_quiet_button(tr("Clear the filters"));
    connect(clear_, &QPushButton::clicked, this, [this] {
        show_all();
        words_->setFocus();  // the button hides
    });
    QPushButton* picture = make_button(tr("Like a picture…"));
    picture->setToolTip(tr("A picture that a client brings: drop it here, or open it"));
    connect(picture, &QPushButton::clicked, this, &WallPage::picture_asked);
    QPushButton* kept = make_quiet_button(tr("Pictures from clients"));
    kept->setToolTip(tr("Those that are kept: somebody else's work"));
    connect(kept, &QPushButton::clicked, this, &WallPage::kept_pictures_asked);
    QPushButton* whole = make_button(tr("Whole screen"));
    connect(whole, &QPushButton::clicked, this, &WallPage::whole_screen_asked);
    QPushButton* client = make_button(tr("For a client"));
    connect(client, &QPushButton::clicked, this, &WallPage::client_screen_asked);
    auto* header = new QWidget;
    auto* column = new QVBoxLayout(header);
    set_reading_margins(*column, space(2), 0, space(4), 0);
    column->setSpacing(space(1));
    auto* first = new FlowLayout(space(2));
    first->addWidget(words_);
    for (QPushButton* button : {picture, whole, client}) first->addWidget(button);
    QHBoxLayout* second = make_row(2);
    auto* found = new FlowLayout(space(2));
    found->addWidget(count_);
    found->addWidget(clear_);
    second->addLayout(found, 1);
    second->addWidget(kept);
    column->addLayout(first);
    column->addLayout(second);
    return header;
}

// Tens of thousands of pairs are read in half a second: once a day, and then what changes.
void WallPage::read_wall() {
    Database& records = session_.library().database();
    const Date today = session_.today();
    if (wall_ && read_on_ == today && read_at_ == change_stamp(records)) return;
    if (wall_ && read_on_ == today) {
        wall_->bring_up_to_date(session_.library());
    } else {
        wall_.emplace(session_.library(), today);
    }
    read_at_ = change_stamp(records);
    read_on_ = today;
}

bool WallPage::refresh() {
    read_wall();
    view_->forget_pictures();
    like_ ? show_like_again() : look_again();
    const QString old = from_utf8(why_pairs_are_old(session_.library()));
    lost_words_ = old.isEmpty() ? words_of_lost() : old;
    lost_->say(lost_words_);
    return !wall_->pairs().empty() || !old.isEmpty();
}

QString WallPage::words_of_lost() {
    QStringList lost;
    for (const Pair& pair : session_.library().pairs().without_photos()) {
        lost << tr("%1: %2, %3")
                    .arg(isolated(pairs_.client(pair)), pairs_.look(pair),
                         angle_and_kind(pair.made.place));
    }
    if (lost.isEmpty()) return {};
    return tr("The photos you chose for %n pair(s) were removed or tagged otherwise, and no others "
              "stand for them:",
              nullptr, static_cast<int>(lost.size())) +
           u'\n' + lost.join(u'\n');
}

// As they are now; those that are no longer there go, and those that she refuses are not shown.
void WallPage::show_like_again() {
    std::map<PairId, const Pair*> now;
    for (const Pair& pair : wall_->pairs()) now.emplace(pair.id, &pair);
    std::erase_if(like_->pairs, [&](const Pair& each) { return !now.contains(each.id); });
    for (Pair& each : like_->pairs) each = *now.at(each.id);
    PairsOnWall shown = *like_;
    std::erase_if(shown.pairs, [](const Pair& each) { return each.choice.refused; });
    show_found(std::move(shown));
}

// With those that she has just typed.
void WallPage::take_with_words(PairFilter filter) {
    filter.words = typed_words();
    take(filter);
}

void WallPage::take(const PairFilter& filter) {
    typing_->stop();
    filter_ = filter;
    like_.reset();
    const QString words = from_utf8(filter.words);
    if (words_->text().simplified() != words) words_->setText(words);
    session_.attempt([this] { look_again(); });
    view_->scrollToTop();
}

void WallPage::look_again() {
    if (!wall_) return;
    PairWall::Found found = wall_->find(session_.library(), filter_);
    filters_->show_filter(filter_, found.counts);
    show_found({std::move(found.pairs)});
}

void WallPage::show_found(PairsOnWall found) {
    const PairId current = current_pair();
    count_->setText(count_words(found.pairs.size()));
    clear_->setVisible(is_filtered() && !like_);
    side_->setVisible(!like_);
    like_bar_->setVisible(like_.has_value());
    QWidget* nothing = like_ ? nothing_like_ : nothing_;
    results_->setCurrentWidget(found.pairs.empty() ? nothing : view_);
    pairs_.show(std::move(found));
    if (current) show_pair(current);
}

void WallPage::show_pair(PairId pair) {
    const int position = pairs_.position_of(pair);
    if (position >= 0) view_->setCurrentIndex(pairs_.index(position));
}

std::string WallPage::typed_words() const {
    return to_utf8(words_->text().simplified());
}

PairId WallPage::current_pair() const {
    const QModelIndex current = view_->currentIndex();
    return current.isValid() ? pairs_.at(current.row()).id : PairId{};
}

int WallPage::current_position() const {
    return std::max(view_->currentIndex().row(), 0);
}

PairsOnWall WallPage::shown_that_may(Use use) {
    PairFilter filter;
    filter.values[Fact::use] = {std::string(word(use))};
    std::set<PairId> may;
    for (const Pair& pair : wall_->find(session_.library(), filter).pairs) may.insert(pair.id);
    PairsOnWall shown;
    for (int i = 0; i < pairs_.rowCount(); ++i) {
        if (may.contains(pairs_.at(i).id)) shown.pairs.push_back(pairs_.at(i));
    }
    return shown;
}

QString WallPage::count_words(std::size_t count) const {
    const QString number = QLocale().toString(static_cast<qlonglong>(count));
    if (like_) {
        return count == 1 ? tr("1 look like it") : tr("%1 looks, the most alike first").arg(number);
    }
    if (!is_filtered()) {
        return count == 1 ? tr("1 pair") : tr("%1 pairs, the newest first").arg(number);
    }
    return count == 1 ? tr("1 pair found") : tr("%1 pairs found").arg(number);
}

void WallPage::show_like(const QString& sentence, const QImage& picture, PairsOnWall like,
                         PairId from) {
    like_bar_->show_like(sentence, picture);
    if (!like_) {
        came_from_ = from ? from : current_pair();
        scrolled_to_ = view_->verticalScrollBar()->value();
        if (typing_->isActive()) filter_.words = typed_words();
    }
    typing_->stop();
    words_->clear();  // they do not count here
    like_ = like;
    show_found(std::move(like));
    view_->setCurrentIndex(pairs_.index(0));
    view_->scrollToTop();
    take_keyboard();
}

// Where none is shown, at the way to others.
void WallPage::take_keyboard() {
    results_->currentWidget()->setFocus();
}

void WallPage::leave_like() {
    notice_->say({});
    like_.reset();
    words_->setText(from_utf8(filter_.words));
    session_.attempt([this] { look_again(); });
    layout()->activate();  // as wide as it was
    show_pair(came_from_);
    view_->verticalScrollBar()->setValue(scrolled_to_);
    view_->scrollTo(view_->currentIndex());
    take_keyboard();
}

void WallPage::show_all() {
    notice_->say({});
    const bool all_shown = !is_filtered() && !like_ && words_->text().isEmpty();
    if (!all_shown) take({});
}

void WallPage::start_typing() {
    words_->setFocus(Qt::ShortcutFocusReason);
    words_->selectAll();
}

}  // namespace quarterturn
