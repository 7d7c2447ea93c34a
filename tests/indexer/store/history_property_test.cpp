// Any sequence of changes, undoing, doing again, restarts and photos brought in again leaves the
// records equal to a plain model in memory. The model keeps a whole picture of the records for
// each action and moves a finger along them; the library keeps only differences.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

constexpr int device_count = 2;

struct ModelPhoto {
    Photo photo;
    int device = -1;  // none below 0
};

struct Picture {
    std::string said;
    std::map<std::string, Tags> tags;  // by name
    std::map<std::string, Date> binned;
    std::array<std::chrono::seconds, device_count> shifts{};
};

class Model {
  public:
    std::vector<ModelPhoto> photos;

    Picture now() const { return pictures_[at_]; }
    void bring_in(const ModelPhoto& photo) {
        photos.push_back(photo);
        for (Picture& picture : pictures_) picture.tags[photo.photo.file.name] = photo.photo.tags;
    }
    void apply(Picture next) {
        const Picture before = now();
        if (next.tags == before.tags && next.shifts == before.shifts &&
            next.binned == before.binned) {
            return;
        }
        pictures_.resize(at_ + 1);
        pictures_.push_back(std::move(next));
        ++at_;
    }
    std::optional<std::string> undo() {
        if (at_ == 0) return std::nullopt;
        return pictures_[at_--].said;
    }
    std::optional<std::string> redo() {
        if (at_ + 1 == pictures_.size()) return std::nullopt;
        return pictures_[++at_].said;
    }

    // As PhotoTable::all() should list them, or those in the bin.
    std::vector<Photo> expected(bool in_bin) const {
        std::vector<Photo> list;
        for (const ModelPhoto& each : photos) {
            Photo photo = each.photo;
            if (now().binned.contains(photo.file.name) != in_bin) continue;
            photo.tags = now().tags.at(photo.file.name);
            if (photo.file.taken) {
                photo.moment = photo.file.taken->local;
                if (each.device >= 0) *photo.moment += now().shifts.at(each.device);
            }
            list.push_back(photo);
        }
        std::stable_sort(list.begin(), list.end(), [](const Photo& a, const Photo& b) {
            return a.moment.value_or(LocalTime::max()) < b.moment.value_or(LocalTime::max());
        });
        return list;
    }

  private:
    std::vector<Picture> pictures_{Picture{}};
    std::size_t at_ = 0;
};

class Story {
  public:
    Story() {
        clients_ = {example_.mira, example_.library.clients().add(client_called("Ada"))};
        Look let_down = example_.library.looks().find(example_.look).value();
        let_down.name = "let down";
        looks_ = {example_.look, example_.library.looks().add(let_down)};
        Device camera;
        camera.make = "Brackwell";
        devices_ = {example_.phone, example_.library.devices().find_or_add(camera)};
    }

    void go_on() {
        switch (*rc::gen::inRange(0, 14)) {
            case 0:
            case 1:
                return bring_in();
            case 2:
                return bring_in_again();
            case 3:
            case 4:
            case 5:
                return tag_many();
            case 6:
                return tag_and_shift();
            case 12:
            case 13:
                return move_bin();
            case 7:
            case 8:
                RC_ASSERT(example_.library.history().undo() == model_.undo());
                return;
            case 9:
            case 10:
                RC_ASSERT(example_.library.history().redo() == model_.redo());
                return;
            default:
                return example_.reopen();
        }
    }

    void compare() {
        RC_ASSERT(example_.library.photos().all() == model_.expected(false));
        std::map<std::string, Date> binned;
        for (const auto& [photo, since] : example_.library.bin().all()) {
            binned[photo.file.name] = since;
            RC_ASSERT(!example_.library.photos().find(photo.id));
        }
        RC_ASSERT(binned == model_.now().binned);
        std::vector<PhotoId> ids;
        for (const Photo& photo : model_.expected(true)) ids.push_back(photo.id);
        RC_ASSERT(example_.library.photos().these_also_in_bin(ids) == model_.expected(true));
        for (int i = 0; i < device_count; ++i) {
            RC_ASSERT(example_.library.devices().find(devices_[i])->clock_shift ==
                      model_.now().shifts[i]);
        }
    }

  private:
    void bring_in() {
        ModelPhoto next;
        next.photo = example_photo("IMG_" + std::to_string(model_.photos.size()) + ".jpg");
        if (*rc::gen::inRange(0, 4) > 0) {
            next.photo.file.taken = taken_at("2026-11-07T10:00:00");
            next.photo.file.taken->local += std::chrono::minutes{*rc::gen::inRange(0, 90)};
        }
        next.device = *rc::gen::inRange(-1, device_count);
        if (next.device >= 0) next.photo.file.device = devices_[next.device];
        next.photo.tags = any_tags();
        next.photo.id = example_.library.photos().add(next.photo);
        model_.bring_in(next);
    }

    void bring_in_again() {
        if (model_.photos.empty()) return;
        Photo again = any_photo().photo;
        again.file.path += " again";
        again.tags = any_tags();
        RC_ASSERT_THROWS_AS(example_.library.photos().add(again), StoreError);
    }

    void tag_many() {
        Change change{"tagged " + std::to_string(++count_), {}, {}};
        Picture next = model_.now();
        add_tags(change, next);
        finish(change, next);
    }

    void tag_and_shift() {
        Change change{"shifted " + std::to_string(++count_), {}, {}};
        Picture next = model_.now();
        if (*rc::gen::arbitrary<bool>()) add_tags(change, next);
        const int device = *rc::gen::inRange(0, device_count);
        next.shifts[device] = std::chrono::minutes{*rc::gen::inRange(-60, 60)};
        change.shifts.push_back({devices_[device], next.shifts[device]});
        finish(change, next);
    }

    void move_bin() {
        if (model_.photos.empty()) return;
        Change change{"moved " + std::to_string(++count_), {}, {}};
        Picture next = model_.now();
        for (int left = *rc::gen::inRange(0, 4); left > 0; --left) {
            const Photo& photo = any_photo().photo;
            const auto day = maybe(
                std::vector{parse_date("2026-11-07").value(), parse_date("2026-11-08").value()});
            change.binned.push_back({photo.id, day});
            next.binned.erase(photo.file.name);
            if (day) next.binned[photo.file.name] = *day;
        }
        finish(change, next);
    }

    void add_tags(Change& change, Picture& next) {
        if (model_.photos.empty()) return;
        const Tags tags = any_tags();
        for (int left = *rc::gen::inRange(0, 6); left > 0; --left) {
            const Photo& photo = any_photo().photo;  // the same one may come twice
            change.tags.push_back({photo.id, tags});
            next.tags[photo.file.name] = tags;
        }
    }

    void finish(const Change& change, Picture& next) {
        next.said = change.said;
        example_.library.history().apply(change);
        model_.apply(next);
    }

    const ModelPhoto& any_photo() {
        return model_.photos[*rc::gen::inRange<std::size_t>(0, model_.photos.size())];
    }

    template <class Value>
    static std::optional<Value> maybe(const std::vector<Value>& values) {
        if (*rc::gen::arbitrary<bool>()) return std::nullopt;
        return *rc::gen::elementOf(values);
    }

    Tags any_tags() {
        Tags tags;
        tags.sitting = maybe(std::vector{example_.trial});
        tags.placed_by_hand = *rc::gen::arbitrary<bool>();
        tags.look = maybe(looks_);
        tags.stage = maybe(std::vector(all_stages.begin(), all_stages.end()));
        tags.angle = maybe(std::vector(all_angles.begin(), all_angles.end()));
        tags.mirrored = *rc::gen::arbitrary<bool>();
        if (const auto shown = maybe(clients_)) tags.shown.push_back(*shown);
        if (*rc::gen::inRange(0, 4) == 0) tags.shown = {clients_[1], clients_[0]};
        tags.note = maybe(std::vector<std::string>{"a pin shows", "髪", "\"'"}).value_or("");
        tags.accepted_because = maybe(std::vector<std::string>{"the only one"}).value_or("");
        return tags;
    }

    ExampleLibrary example_;
    Model model_;
    std::vector<ClientId> clients_;
    std::vector<LookId> looks_;
    std::vector<DeviceId> devices_;
    int count_ = 0;
};

RC_GTEST_PROP(HistoryProperty, EqualsAPlainModel, ()) {
    Story story;
    for (int left = *rc::gen::inRange(1, 40); left > 0; --left) story.go_on();
    story.compare();
}

}  // namespace
}  // namespace quarterturn
