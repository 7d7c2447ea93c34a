#include "ui/pairs/pairs_screen.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QMimeData>
#include <QShortcut>
#include <QStackedWidget>

#include "ui/pairs/kept_pictures_page.h"
#include "ui/pairs/like_bar.h"
#include "ui/pairs/pair_page.h"
#include "ui/pairs/progress_page.h"
#include "ui/pairs/wall_page.h"
#include "ui/pairs/whole_page.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/progress_panel.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString dropped_file(const QMimeData& data) {
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) return url.toLocalFile();
    }
    return {};
}

}  // namespace

PairsScreen::PairsScreen(Session& session)
    : session_(session),
      pairs_(new ShownPairs(session, this)),
      client_pairs_(new ShownPairs(session, this)),
      laid_(new LaidPairs(session, this)),
      pages_(new PageStack) {
    setAcceptDrops(true);
    build();
    build_pages();
    add_keys();
}

void PairsScreen::build() {
    work_ = new ProgressPanel(tr("Measuring the hair in the photos"));
    work_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    work_->hide();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(work_);
    all->addWidget(pages_, 1);
}

void PairsScreen::build_pages() {
    empty_ = build_empty();
    wall_ = new WallPage(session_, *pairs_, *laid_);
    connect(wall_, &WallPage::opened, this, &PairsScreen::open);
    connect(wall_, &WallPage::picture_asked, this, &PairsScreen::ask_picture);
    connect(wall_, &WallPage::kept_pictures_asked, this, &PairsScreen::show_kept_pictures);
    connect(&wall_->like_bar(), &LikeBar::keep_asked, this,
            [this] { session_.attempt([this] { ask_whose_picture(); }); });
    connect(wall_, &WallPage::whole_screen_asked, this, &PairsScreen::ask_whole_screen);
    connect(wall_, &WallPage::client_screen_asked, this,
            [this] { session_.attempt([this] { ask_client_screen(); }); });
    kept_ = new KeptPicturesPage(session_);
    connect(kept_, &KeptPicturesPage::left, this, &PairsScreen::go_back);
    connect(kept_, &KeptPicturesPage::like_asked, this, &PairsScreen::look_like_kept);
    connect(kept_, &KeptPicturesPage::picture_asked, this, &PairsScreen::ask_picture);
    build_large_pages();
    for (QWidget* page : {empty_, static_cast<QWidget*>(wall_), static_cast<QWidget*>(pair_),
                          static_cast<QWidget*>(progress_), static_cast<QWidget*>(kept_),
                          static_cast<QWidget*>(whole_), static_cast<QWidget*>(for_client_)}) {
        pages_->addWidget(page);
    }
    pages_->setCurrentWidget(wall_);
}

QWidget* PairsScreen::build_empty() {
    auto* sentence = new EmptyPage(
        tr("Here before stands beside after, both heads equally large. A pair makes itself as soon "
           "as a look has a photo before and one after, tagged with the same angle."),
        tr("Tag photos going round the head"));
    connect(sentence, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::round_the_head}); });
    lost_ = new Notice;
    kept_from_empty_ = make_quiet_button(tr("Pictures from clients"));
    connect(kept_from_empty_, &QPushButton::clicked, this, &PairsScreen::show_kept_pictures);
    auto* empty = new QWidget;
    auto* column = new QVBoxLayout(empty);
    column->setContentsMargins(space(6), space(3), space(6), space(3));
    column->addWidget(lost_);
    column->addWidget(sentence, 1);
    column->addWidget(kept_from_empty_, 0, Qt::AlignHCenter);
    return empty;
}

void PairsScreen::build_large_pages() {
    pair_ = new PairPage(session_, *pairs_, *laid_);
    connect(pair_, &PairPage::left, this, &PairsScreen::go_back);
    connect(pair_, &PairPage::step_asked, this, &PairsScreen::step);
    connect(pair_, &PairPage::whole_screen_asked, this, &PairsScreen::ask_whole_screen);
    connect(pair_, &PairPage::like_asked, this, &PairsScreen::look_like_pair);
    connect(pair_, &PairPage::progress_asked, this, &PairsScreen::show_progress);
    progress_ = new ProgressPage(session_, *laid_);
    connect(progress_, &ProgressPage::left, this, &PairsScreen::go_back);
    whole_ = new WholePage(session_, *pairs_, *laid_, WholePage::Viewer::stylist);
    for_client_ = new WholePage(session_, *client_pairs_, *laid_, WholePage::Viewer::client);
    for (WholePage* page : {whole_, for_client_}) {
        connect(page, &WholePage::left, this, &PairsScreen::go_back);
    }
}

void PairsScreen::add_keys() {
    const auto add = [this](const QKeySequence& key, auto act) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    const auto type = [this] {
        if (pages_->currentWidget() == wall_) wall_->start_typing();
    };
    add(QKeySequence::Find, type);
    add(Qt::Key_Slash, type);
    add(Qt::Key_Escape, [this] { go_back(); });
    add(Qt::Key_F11, [this] { fills_screen() ? leave_whole_screen() : ask_whole_screen(); });
}

QString PairsScreen::help() const {
    return tr(
        "Pairs make themselves from tagged photos. Tick values at the side or type words to find "
        "some; numbers say how many pairs each value would leave. A pair opened large can be slid, "
        "faded, pinned, refused, or given other photos. A hatched mark stands before what makes a "
        "comparison unfair.\n"
        "Drop a picture that a client brings anywhere here: your own looks most like it come "
        "up. What you keep of them stands under Pictures from clients.\n\n"
        "/ or Ctrl+F: to the search field\n"
        "Arrow keys, Enter: through the wall, open a pair\n"
        "Page Up, Page Down: the pair before, the next\n"
        "Left, Right, Home, End: move the divide or the fade, or step through a client's progress\n"
        "F11: the whole screen; there B: photos dim or bright while the window is dim\n"
        "Escape: one step back; on the wall, all pairs again");
}

void PairsScreen::refresh() {
    const bool any = wall_->refresh();
    if (pages_->currentWidget() == for_client_) return show_for_client();
    QWidget* page = pages_->currentWidget();
    if (page == kept_) return kept_->show_pictures();
    if (!any) return show_empty();
    if (page == empty_) pages_->setCurrentWidget(wall_);
    if (page == whole_) whole_->show_position(whole_->position());
    if (page != pair_ && page != progress_) return;
    if (!pair_->pair() || !pair_->show_pair(pair_->pair()->id)) pages_->setCurrentWidget(wall_);
    if (pages_->currentWidget() == progress_) show_progress();
}

void PairsScreen::show_empty() {
    lost_->say(wall_->lost_pairs());
    kept_from_empty_->setVisible(!session_.library().inspirations().all().empty());
    pages_->setCurrentWidget(empty_);
}

void PairsScreen::show_kept_pictures() {
    session_.attempt([this] {
        kept_->show_pictures();
        pages_->setCurrentWidget(kept_);
        kept_->setFocus();
    });
}

void PairsScreen::open(int position) {
    session_.attempt([&] {
        wall_->notice().say({});
        if (!pair_->show_pair(pairs_->at(position).id)) return refresh();
        if (pages_->currentWidget() == pair_) return;
        pages_->setCurrentWidget(pair_);
        pair_->setFocus();
    });
}

void PairsScreen::step(int pairs) {
    if (!pair_->pair()) return;
    const int there = pairs_->position_of(pair_->pair()->id) + pairs;
    if (there < 0 || there >= pairs_->rowCount()) return;
    open(there);
    wall_->show_pair(pairs_->at(there).id);
}

void PairsScreen::go_back() {
    const QWidget* page = pages_->currentWidget();
    if (fills_screen()) return leave_whole_screen();
    give_up_finding();
    if (page == progress_) return pages_->setCurrentWidget(pair_);
    if (page == wall_) return wall_->shows_like() ? wall_->leave_like() : wall_->show_all();
    if (page == kept_) {
        if (kept_->leave_question()) return;
        pages_->setCurrentWidget(wall_);
        return refresh();
    }
    if (page != pair_ || pair_->leave_stage()) return;
    pages_->setCurrentWidget(wall_);
    if (pair_->pair()) wall_->show_pair(pair_->pair()->id);
    wall_->take_keyboard();
}

void PairsScreen::show_progress() {
    session_.attempt([this] {
        const auto look = session_.library().looks().find(pair_->pair()->made.place.look);
        if (!look) return;
        const bool there = pages_->currentWidget() == progress_;
        pages_->setCurrentWidget(progress_);  // before its frames, which take the focus
        progress_->show_client(
            look->client, there ? std::nullopt : std::optional(pair_->pair()->made.place.angle));
    });
}

bool PairsScreen::fills_screen() const {
    return pages_->currentWidget() == whole_ || pages_->currentWidget() == for_client_;
}

bool PairsScreen::is_for_client() const {
    return pages_->currentWidget() == for_client_;
}

void PairsScreen::ask_whole_screen() {
    if (pairs_->rowCount() == 0) return session_.say(tr("There is no pair to show."));
    alone_ = whole_;
    emit alone_asked(true);
}

void PairsScreen::ask_client_screen() {
    client_pairs_->show(wall_->shown_that_may(Use::consultation));
    if (client_pairs_->rowCount() == 0) {
        return wall_->notice().say(
            tr("None of these pairs may be shown to a client: everyone in them must have allowed "
               "to be shown in consultation, and it must be recorded whose the photos are. Open a "
               "pair and choose One picture of both to read what stands against it."));
    }
    wall_->notice().say({});
    alone_ = for_client_;
    emit alone_asked(true);
}

// What was allowed may be withdrawn while she looks: the wall, with names, is not for her either.
void PairsScreen::show_for_client() {
    client_pairs_->show(wall_->shown_that_may(Use::consultation));
    for_client_->show_position(for_client_->position());
}

void PairsScreen::stand_alone(bool alone) {
    if (!alone) {
        if (fills_screen()) pages_->setCurrentWidget(before_whole_);
        work_->setVisible(!finding_.isNull());
        if (const auto like = std::exchange(waiting_, {})) show_like(*like);
        return;
    }
    work_->hide();
    before_whole_ = pages_->currentWidget();
    const ShownPairs& pairs = alone_ == whole_ ? *pairs_ : *client_pairs_;
    pages_->setCurrentWidget(alone_);
    alone_->show_position(std::max(pairs.position_of(current_pair()), 0));
    alone_->setFocus();
}

// The one she is at, large or on the wall; none: no pair.
PairId PairsScreen::current_pair() const {
    if (before_whole_ != wall_ && pair_->pair()) return pair_->pair()->id;
    const int position = wall_->current_position();
    return position < pairs_->rowCount() ? pairs_->at(position).id : PairId{};
}

// Where she was, at the pair that she saw last.
void PairsScreen::leave_whole_screen() {
    const ShownPairs& pairs = alone_ == whole_ ? *pairs_ : *client_pairs_;
    const int position = alone_->position();
    pages_->setCurrentWidget(before_whole_ ? before_whole_ : wall_);
    emit alone_asked(false);
    if (position >= pairs.rowCount()) return;
    const PairId seen = pairs.at(position).id;
    wall_->show_pair(seen);
    if (pages_->currentWidget() == pair_) open(pairs_->position_of(seen));
}

void PairsScreen::dragEnterEvent(QDragEnterEvent* event) {
    const bool hers = !is_for_client() && !dropped_file(*event->mimeData()).isEmpty();
    if (hers) event->acceptProposedAction();
}

void PairsScreen::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    look_like_picture(to_utf8(dropped_file(*event->mimeData())));
}

}  // namespace quarterturn
