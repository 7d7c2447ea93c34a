#include "ui/round_the_head/head_round.h"

#include <algorithm>

#include "indexer/intake/bin.h"
#include "indexer/intake/tagging.h"
#include "ui/look_choice/look_choice.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

bool is_or_was_later(const Photo& one, const Photo& other) {
    if (!one.moment || !other.moment) return !one.moment && one.id > other.id;
    return std::pair(*one.moment, one.id) > std::pair(*other.moment, other.id);
}

}  // namespace

void HeadRound::choose_look(const Place& place) {
    Library& library = session_.library();
    if (place.look) {
        session_.choose_look(place.look);
    } else if (place.sitting) {
        const auto looks = library.looks().of_sitting(*place.sitting);
        const auto in_hand = session_.look_in_hand();
        const bool among = std::ranges::any_of(looks, [&](auto& l) { return l.id == in_hand; });
        if (!looks.empty() && !among) session_.choose_look(looks.front().id);
    }
}

void HeadRound::arrive(const Place& place) {
    session_.attempt([&] {
        choose_look(place);
        refresh();
        if (place.photo) take_in_hand(*place.photo);
        if (place.shot) show_stage(place.shot->stage);
    });
}

void HeadRound::refresh() {
    Library& library = session_.library();
    look_ = likely_look(session_);
    round_.reset();
    if (!look_) return;
    round_ = round_the_head(library, *look_);
    choose_photo();
}

void HeadRound::choose_photo() {
    const auto before = in_hand_;
    const auto back = std::find_if(placed_.rbegin(), placed_.rend(),
                                   [this](PhotoId photo) { return waits(photo); });
    if (back != placed_.rend()) {
        in_hand_ = *back;
        placed_.erase(std::next(back).base());
    } else if (!in_hand()) {
        const auto next = std::ranges::find_if(round_->waiting, [&](const WaitingPhoto& waiting) {
            return last_in_hand_ && is_or_was_later(waiting.photo, *last_in_hand_);
        });
        const auto chosen = next == round_->waiting.end() ? round_->waiting.begin() : next;
        in_hand_.reset();
        if (chosen != round_->waiting.end()) in_hand_ = chosen->photo.id;
    }
    const Photo* photo = in_hand();
    if (!photo) return;
    last_in_hand_ = *photo;
    if (in_hand_ != before) stage_chosen_ = false;
    if (!stage_chosen_) stage_ = stage_for(*photo);
}

std::size_t HeadRound::waiting_index(PhotoId photo) const {
    const auto found = std::ranges::find_if(
        round_->waiting, [&](const WaitingPhoto& waiting) { return waiting.photo.id == photo; });
    return static_cast<std::size_t>(found - round_->waiting.begin());
}

bool HeadRound::waits(PhotoId photo) const {
    return round_ && waiting_index(photo) < round_->waiting.size();
}

const Photo* HeadRound::in_hand() const {
    if (!round_ || !in_hand_) return nullptr;
    if (waits(*in_hand_)) return &round_->waiting[waiting_index(*in_hand_)].photo;
    const auto& photos = round_->state.photos;
    const auto found = std::ranges::find_if(photos, [&](auto& p) { return p.id == *in_hand_; });
    return found == photos.end() ? nullptr : &*found;
}

std::vector<PhotoId> HeadRound::frames_in_hand() const {
    if (!in_hand()) return {};
    if (!waits(*in_hand_)) return {*in_hand_};
    return round_->waiting[waiting_index(*in_hand_)].all();
}

std::vector<Photo> HeadRound::lying_at(Angle angle) const {
    return photos_of_shot(round_->state.look, {stage_, angle}, round_->state.photos);
}

std::vector<Photo> HeadRound::to_compare() const {
    const Photo* held = in_hand();
    if (!held) return {};
    std::vector<Photo> photos{*held};
    const auto add = [&](const Photo& photo) {
        const bool there = std::ranges::any_of(photos, [&](auto& p) { return p.id == photo.id; });
        if (!there) photos.push_back(photo);
    };
    for (const PhotoId id : frames_in_hand()) {
        if (const auto frame = session_.library().photos().find(id)) add(*frame);
    }
    const auto suggested = suggestion();
    const auto angle = held->tags.angle ? held->tags.angle
                       : suggested      ? std::optional(suggested->angle)
                                        : std::nullopt;
    if (angle) std::ranges::for_each(lying_at(*angle), add);
    for (const WaitingPhoto& waiting : round_->waiting) add(waiting.photo);
    return photos;
}

std::optional<AngleSuggestion> HeadRound::suggestion() const {
    const Photo* photo = in_hand();
    if (!photo || !waits(photo->id)) return std::nullopt;
    return suggest_angle(*photo);
}

Stage HeadRound::stage_for(const Photo& photo) const {
    if (photo.tags.stage) return *photo.tags.stage;
    if (!photo.suggestion.stage) return stage_;
    const auto said = said_instead_.find(*photo.suggestion.stage);
    return said == said_instead_.end() ? *photo.suggestion.stage : said->second;
}

void HeadRound::take_in_hand(PhotoId photo) {
    in_hand_ = photo;
    stage_chosen_ = false;
    if (!in_hand()) return;
    last_in_hand_ = *in_hand();
    stage_ = stage_for(*in_hand());
}

void HeadRound::step(int by) {
    if (!round_ || round_->waiting.empty()) return;
    const auto count = static_cast<int>(round_->waiting.size());
    const int index = in_hand_ ? static_cast<int>(waiting_index(*in_hand_)) : count;
    const int next = index == count ? 0 : (index + by + count) % count;
    take_in_hand(round_->waiting[static_cast<std::size_t>(next)].photo.id);
}

void HeadRound::show_look(LookId look) {
    session_.choose_look(look);
    session_.attempt([this] { refresh(); });
}

void HeadRound::show_stage(Stage stage) {
    stage_ = stage;
    stage_chosen_ = true;
}

void HeadRound::put(const std::vector<PhotoId>& photos, Angle angle) {
    if (photos.empty() || !round_) return;
    TagWishes wishes;
    wishes.angle.emplace(angle);
    wishes.stage.emplace(stage_);
    // Hair is brushed out once for all looks of a sitting, so a before photo names none.
    if (stage_ != Stage::before) wishes.look.emplace(look());
    placed_.push_back(photos.front());
    const bool went_well =
        session_.change_photos([&](Library& library) { tag(library, photos, wishes); });
    if (!went_well) placed_.pop_back();
}

void HeadRound::place(Angle angle) {
    if (!in_hand()) return;
    const auto frames = frames_in_hand();
    in_hand_.reset();
    put(frames, angle);
    if (!in_hand_) choose_photo();
}

void HeadRound::take_suggestion() {
    if (const auto suggested = suggestion()) place(suggested->angle);
}

void HeadRound::tag_in_hand(const TagWishes& wishes) {
    const auto frames = frames_in_hand();
    if (frames.empty()) return;
    session_.change_photos([&](Library& library) { tag(library, frames, wishes); });
}

void HeadRound::say_stage(Stage stage) {
    const Photo* photo = in_hand();
    show_stage(stage);
    if (!photo) return;
    if (waits(photo->id)) {
        if (photo->suggestion.stage) said_instead_[*photo->suggestion.stage] = stage;
        return;
    }
    TagWishes wishes;
    wishes.stage.emplace(stage);
    if (stage != Stage::before) wishes.look.emplace(look());
    tag_in_hand(wishes);
}

void HeadRound::other_look() {
    if (!round_ || round_->looks.size() < 2) return;
    const auto& looks = round_->looks;
    const auto now = std::ranges::find_if(looks, [&](auto& l) { return l.id == look(); });
    const LookId other = now + 1 == looks.end() ? looks.front().id : (now + 1)->id;
    const Photo* photo = in_hand();
    session_.choose_look(other);
    if (!photo || waits(photo->id) || photo->tags.stage == Stage::before) {
        session_.attempt([this] { refresh(); });
        return;
    }
    TagWishes wishes;
    wishes.look.emplace(other);
    tag_in_hand(wishes);
}

void HeadRound::turn_round() {
    if (!in_hand()) return;
    TagWishes wishes;
    wishes.mirrored = !in_hand()->tags.mirrored;
    tag_in_hand(wishes);
}

void HeadRound::use_anyway(const QString& reason) {
    if (!in_hand()) return;
    TagWishes wishes;
    wishes.accepted_because = to_utf8(reason);
    tag_in_hand(wishes);
}

void HeadRound::take_off() {
    if (!in_hand() || waits(*in_hand_)) return;
    TagWishes wishes;
    wishes.angle.emplace(std::nullopt);
    tag_in_hand(wishes);
}

void HeadRound::put_into_bin() {
    const Photo* photo = in_hand();
    if (!photo) return;
    const PhotoId id = photo->id;
    placed_.push_back(id);
    const bool went_well = session_.change_photos(
        [&](Library& library) { quarterturn::put_into_bin(library, {{id}}, session_.today()); });
    if (!went_well) placed_.pop_back();
}

}  // namespace quarterturn
