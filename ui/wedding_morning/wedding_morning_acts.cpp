// What she does at the board.

#include <QApplication>
#include <QStackedWidget>

#include "indexer/rules/timers.h"
#include "ui/shell/session.h"
#include "ui/wedding_morning/board_bar.h"
#include "ui/wedding_morning/board_edits.h"
#include "ui/wedding_morning/board_photo.h"
#include "ui/wedding_morning/own_timer.h"
#include "ui/wedding_morning/wedding_morning_screen.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {

const BoardLook* WeddingMorningScreen::look() const {
    const auto& looks = client().looks;
    return place_.look < looks.size() ? &looks[place_.look] : nullptr;
}

void WeddingMorningScreen::go_to_client(std::size_t client) {
    if (!board_ || client >= board_->clients.size()) return;
    wanted_client_ = board_->clients[client].client.id;
    wanted_look_.reset();
    notice_->say({});
    show_board();
}

void WeddingMorningScreen::go_to_look(std::size_t look) {
    wanted_look_ = client().looks[look].state.look.id;
    show_board();
}

void WeddingMorningScreen::turn(int by) {
    if (!board_ || board_->clients.empty() || enlarged_->isVisible()) return;
    go_to_client(place_.client + static_cast<std::size_t>(by));  // below the first there is none
}

void WeddingMorningScreen::tick(int step, bool done) {
    if (!look()) return;
    const LookId ticked = look()->state.look.id;
    const StepTick tick{step, look()->steps[static_cast<std::size_t>(step)].words};
    gathered_ = true;
    session_.change_records(change_step(*wedding_, ticked, tick, done));
    gathered_ = false;
    session_.attempt([&] {
        board_->clients[place_.client].looks[place_.look] =
            board_look(session_.library(), *wedding_, ticked);
        show_board();
    });
}

void WeddingMorningScreen::say_done(bool done) {
    session_.change_records(change_client(*wedding_, client().client, done));
}

void WeddingMorningScreen::start_step_timer(int step) {
    const BoardStep& waiting = look()->steps[static_cast<std::size_t>(step)];
    const std::string name = timer_name(client().client.name, waiting.waits_for);
    session_.attempt([&] {
        start(timer_from(*wedding_, name, *waiting.waiting_minutes, world_.utc_seconds()));
    });
}

void WeddingMorningScreen::start_own_timer(const QString& name, int minutes) {
    try {
        start(timer_from(*wedding_, to_utf8(name), minutes, world_.utc_seconds()));
        own_timer_->hide();
    } catch (const std::invalid_argument& wrong) {
        own_timer_->say(said_here(wrong.what()));
    }
}

void WeddingMorningScreen::start(const Timer& timer) {
    change_timers(start_timer(timer));
    if (silence_told_ || !remembered_timer_wishes().sound) return;
    silence_told_ = true;
    if (world_.bell->can_be_heard()) return;
    notice_->say(
        tr("No sound can be played here: when a timer ends, it only flashes. Look at the "
           "board, or set a clock that rings beside it."));
}

void WeddingMorningScreen::change_timers(const Edit& edit) {
    gathered_ = true;
    session_.change_records(edit);
    gathered_ = false;
}

void WeddingMorningScreen::enlarge(Angle angle) {
    std::vector<ShownPhoto> photos;
    std::size_t first = 0;
    for (const BoardShot& shot : look()->shots) {
        if (!shot.photo) continue;
        if (shot.angle == angle) first = photos.size();
        QString words = shown(shot.angle);
        words.front() = words.front().toUpper();
        photos.push_back({words, *shot.photo, shot.angle});
    }
    enlarged_->show_photos(std::move(photos), first);
    pages_->setCurrentWidget(enlarged_);
}

void WeddingMorningScreen::enlarge_step(int step, std::size_t photo) {
    std::vector<ShownPhoto> photos;
    for (const Photo& each : look()->steps[static_cast<std::size_t>(step)].photos) {
        const int number = static_cast<int>(photos.size()) + 1;
        photos.push_back({tr("Step %1, photo %2").arg(step + 1).arg(number), each, std::nullopt});
    }
    enlarged_->show_photos(std::move(photos), photo);
    pages_->setCurrentWidget(enlarged_);
}

void WeddingMorningScreen::close_enlarged() {
    const ShownPhoto* shown = enlarged_->shown_photo();
    pages_->setCurrentWidget(going_);
    BoardPhoto* photo = shown && shown->angle ? on_board_->photos().at(*shown->angle) : nullptr;
    if (photo) photo->setFocus(Qt::OtherFocusReason);
    want_pictures();
}

void WeddingMorningScreen::step_back() {
    if (enlarged_->isVisible()) {
        close_enlarged();
    } else if (own_timer_->isVisible()) {
        own_timer_->hide();
    } else if (alone_) {
        emit alone_asked(false);
    }
}

void WeddingMorningScreen::toggle_dim() {
    Theme theme = remembered_theme();
    theme.mood = theme.mood == Mood::dawn ? Mood::paper : Mood::dawn;
    session_.use_theme(theme);
    photos_bright_ = false;
    show_light();
}

void WeddingMorningScreen::toggle_photo_light() {
    photos_bright_ = !photos_bright_;
    show_light();
}

void WeddingMorningScreen::show_light() {
    const bool dim = remembered_theme().mood == Mood::dawn;
    const bool veiled = dim && !photos_bright_;
    bar_->show_light(dim, veiled);
    on_board_->veil_photos(veiled);
    enlarged_->veil(veiled);
}

void WeddingMorningScreen::take_along(TakenAlong what) {
    if (!board_ || board_->clients.empty()) return;
    TakenFrom from{board_->wedding, client().client, std::nullopt};
    if (look()) from.look = look()->state.look.id;
    take_along_->take(what, from);
}

void WeddingMorningScreen::lead_to(Moment moment) {
    Place place{.moment = moment, .wedding = wedding_};
    if (board_ && !board_->clients.empty()) {
        place.client = client().client.id;
        if (look()) place.look = look()->state.look.id;
    }
    session_.go_to(place);
}

}  // namespace quarterturn
