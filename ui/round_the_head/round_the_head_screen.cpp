#include "ui/round_the_head/round_the_head_screen.h"

#include <QStackedWidget>

#include "indexer/intake/heads.h"
#include "indexer/rules/ring.h"
#include "ui/look_choice/look_choice.h"
#include "ui/round_the_head/closer_part.h"
#include "ui/round_the_head/hand_part.h"
#include "ui/round_the_head/missing_part.h"
#include "ui/round_the_head/plan_part.h"
#include "ui/round_the_head/tray.h"
#include "ui/theme/theme.h"
#include "ui/widgets/coverage_ring.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/head_plan.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// The plan has most of the room; the tray and the photo in hand get more of a wider window.
constexpr int plan_share = 10;
constexpr int tray_share = 4;
constexpr int hand_share = 5;
// A wall of sentences is not read, and in a low window the plan needs the room.
constexpr std::size_t most_gaps_told = 4;
constexpr int low_window = 640;
constexpr int least_hand_steps = 58;
constexpr int most_hand_steps = 100;

QScrollArea* hand_side(QWidget* content) {
    QScrollArea* scroll = make_scrolling_side(content);
    scroll->setMinimumWidth(space(least_hand_steps));
    scroll->setMaximumWidth(space(most_hand_steps));
    return scroll;
}

}  // namespace

RoundTheHeadScreen::RoundTheHeadScreen(Session& session) : session_(session), round_(session) {
    name_keys();
    build();
}

void RoundTheHeadScreen::build() {
    pages_ = new PageStack;
    empty_ = new EmptyPage(tr("Here the photos of a look are placed round the head, each where the "
                              "camera stood. There is no look yet: it is added to a client."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    going_ = new QWidget;
    auto* column = new QVBoxLayout(going_);
    column->setContentsMargins(space(4), space(3), space(4), 0);
    column->setSpacing(space(2));
    column->addWidget(build_header());
    column->addWidget(build_body(), 1);
    closer_ = new CloserPart(session_);
    closer_->setContentsMargins(space(6), space(3), space(6), 0);
    connect(closer_, &CloserPart::closed, this, [this] {
        pages_->setCurrentWidget(going_);
        body_->setFocus();
    });
    for (QWidget* page : {static_cast<QWidget*>(empty_), going_, static_cast<QWidget*>(closer_)}) {
        pages_->addWidget(page);
    }
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* RoundTheHeadScreen::build_header() {
    auto* header = new QWidget;
    auto* row = new QHBoxLayout(header);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(2));
    ring_ = new CoverageRing(space(9));
    looks_ = new LookChoice(session_);
    connect(looks_, &LookChoice::chosen, this,
            [this](LookId look) { use([&] { round_.show_look(look); }); });
    other_look_ = make_quiet_button(tr("Other look (L)"));
    connect(other_look_, &QPushButton::clicked, this,
            [this] { use([this] { round_.other_look(); }); });
    row->addWidget(ring_);
    row->addWidget(looks_, 1);
    auto* buttons = new FlowLayout(space(2));
    buttons->addWidget(other_look_);
    for (const Stage stage : all_stages) {
        auto* button = make_button({});
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this,
                [this, stage] { use([&] { round_.say_stage(stage); }); });
        buttons->addWidget(button);
        stages_[stage] = button;
    }
    row->addLayout(buttons);
    return header;
}

QWidget* RoundTheHeadScreen::build_body() {
    body_ = new QWidget;
    body_->setFocusPolicy(Qt::ClickFocus);
    auto* row = new QHBoxLayout(body_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(3));
    tray_ = new Tray(session_);
    connect(tray_, &Tray::taken, this,
            [this](PhotoId photo) { use([&] { round_.take_in_hand(photo); }); });
    plan_ = new PlanPart(session_, round_);
    connect(&plan_->plan(), &HeadPlan::chosen, this, &RoundTheHeadScreen::choose_angle);
    connect(&plan_->plan(), &HeadPlan::dropped, this,
            [this](Angle angle, const std::vector<PhotoId>& photos) {
                use([&] { round_.put(photos, angle); });
            });
    missing_ = new MissingPart;
    connect(missing_, &MissingPart::asked_for, this, &RoundTheHeadScreen::go_to_shot);
    connect(missing_, &MissingPart::sign_off_asked, this,
            [this] { session_.go_to({.moment = Moment::sign_off, .look = round_.look()}); });
    hand_ = new HandPart(session_, round_);
    connect(hand_, &HandPart::every_pixel_asked, this, [this] { look_closer(false); });
    connect(hand_, &HandPart::side_by_side_asked, this, [this] { look_closer(true); });
    QVBoxLayout* middle = make_column(2);
    middle->addWidget(plan_, 1);
    middle->addWidget(missing_);
    row->addWidget(tray_, tray_share);
    row->addLayout(middle, plan_share);
    row->addWidget(hand_side(hand_), hand_share);
    add_shortcuts(*body_);
    return body_;
}

void RoundTheHeadScreen::use(const std::function<void()>& act) {
    act();
    show_round();
    if (pages_->currentWidget() == going_ && !body_->isAncestorOf(focusWidget())) {
        body_->setFocus();
    }
}

void RoundTheHeadScreen::arrive(const Place& place) {
    round_.arrive(place);
    if (pages_->currentWidget() == closer_) pages_->setCurrentWidget(going_);
    focus_next_ = place.shot ? plan_->plan().place(place.shot->angle) : body_;
}

void RoundTheHeadScreen::refresh() {
    round_.refresh();
    show_round();
    // Once the screen is shown: her next key places a photo.
    if (QWidget* next = std::exchange(focus_next_, nullptr)) next->setFocus();
    if (round_.has_look()) look_for_faces();
}

void RoundTheHeadScreen::show_round() {
    if (!round_.has_look()) {
        pages_->setCurrentWidget(empty_);
        return;
    }
    if (pages_->currentWidget() == empty_) pages_->setCurrentWidget(going_);
    const CoverageReport& coverage = round_.round().state.coverage;
    ring_->show_ring(ring_of(coverage));
    looks_->show_looks(round_.look());
    other_look_->setVisible(round_.round().looks.size() > 1);
    for (const auto& [stage, button] : stages_) {
        const QString name = shown(stage);
        button->setText(
            tr("%1 (%2)").arg(name.left(1).toUpper() + name.mid(1), name.left(1).toUpper()));
        button->setChecked(stage == round_.stage());
    }
    const Photo* photo = round_.in_hand();
    tray_->show_waiting(round_.round().waiting, photo ? std::optional(photo->id) : std::nullopt);
    plan_->show_round();
    show_gaps();
    hand_->show_round();
}

void RoundTheHeadScreen::show_gaps() {
    missing_->show_gaps(round_.round().state.coverage, round_.stage(),
                        height() < low_window ? 1 : most_gaps_told);
}

void RoundTheHeadScreen::resizeEvent(QResizeEvent* event) {
    Screen::resizeEvent(event);
    if (round_.has_look()) show_gaps();
}

void RoundTheHeadScreen::choose_angle(Angle angle) {
    const auto lying = round_.lying_at(angle);
    use([&] {
        if (lying.empty()) {
            round_.place(angle);
            return;
        }
        const Photo* held = round_.in_hand();
        const auto now = std::ranges::find_if(
            lying, [&](const Photo& photo) { return held && photo.id == held->id; });
        const bool last = now == lying.end() || now + 1 == lying.end();
        round_.take_in_hand(last ? lying.front().id : (now + 1)->id);
    });
}

void RoundTheHeadScreen::go_to_shot(const Shot& shot) {
    use([&] {
        round_.show_stage(shot.stage);
        const auto lying = round_.lying_at(shot.angle);
        if (!lying.empty()) round_.take_in_hand(lying.front().id);
    });
    plan_->plan().place(shot.angle)->setFocus();
}

void RoundTheHeadScreen::look_closer(bool side_by_side) {
    if (!round_.in_hand()) return;
    closer_->show_photos(round_.to_compare(), side_by_side);
    pages_->setCurrentWidget(closer_);
    closer_->setFocus();
}

void RoundTheHeadScreen::look_for_faces() {
    PhotoId newest = faces_up_to_;
    for (const WaitingPhoto& waiting : round_.round().waiting) {
        if (!waiting.photo.head_signs) newest = std::max(newest, waiting.photo.id);
    }
    if (newest == faces_up_to_) return;
    faces_up_to_ = newest;
    session_.start<HeadReport>(
        [&decoder = session_.decoder()](Library& library, Job& job) {
            return look_for_heads(library, decoder, {}, job.stop_token());
        },
        [](const HeadReport&) {});
}

}  // namespace quarterturn
