// Whatever she does in whatever order, the library equals a plain model in memory: photos with
// their tags, and a list of all earlier states to go back and forth in.

#include <rapidcheck/gtest.h>

#include "indexer/intake/sort.h"
#include "indexer/intake/tagging.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/intake/import_fixture.h"

namespace quarterturn {
namespace {

constexpr int card_photos = 6;

// What the model knows of one photo, by its name.
struct Plain {
    std::optional<Angle> angle;
    std::optional<Stage> stage;
    bool mirrored = false;
    std::string note;
    std::optional<bool> placed_in_trial;  // by hand: in the trial, or in none

    bool operator==(const Plain&) const = default;
};

using Album = std::map<std::string, Plain>;

// Undoing takes tags back and never a photo, so a step keeps only the tags it changed.
class Model {
  public:
    void bring_in(const std::string& name) { album_.try_emplace(name); }

    template <class Change>
    void act(const std::vector<std::string>& names, Change change) {
        Album before;
        Album after;
        for (const std::string& name : names) {
            Plain changed = album_.at(name);
            change(changed);
            if (changed == album_.at(name)) continue;
            before[name] = album_.at(name);
            after[name] = changed;
        }
        if (after.empty()) return;
        undone_.clear();
        done_.emplace_back(before, after);
        overwrite(after);
    }

    bool undo() {
        if (done_.empty()) return false;
        overwrite(done_.back().first);
        undone_.push_back(done_.back());
        done_.pop_back();
        return true;
    }

    bool redo() {
        if (undone_.empty()) return false;
        overwrite(undone_.back().second);
        done_.push_back(undone_.back());
        undone_.pop_back();
        return true;
    }

    const Album& album() const { return album_; }

  private:
    void overwrite(const Album& part) {
        for (const auto& [name, plain] : part) album_[name] = plain;
    }

    Album album_;
    std::vector<std::pair<Album, Album>> done_;
    std::vector<std::pair<Album, Album>> undone_;
};

// The same things done to both.
class Both : public ExampleLibrary {
  public:
    explicit Both(const Path& card) : card_(card) {}

    void step() {
        switch (*rc::gen::inRange(0, 8)) {
            case 0:
                return bring_in();
            case 1:
                return set_angle();
            case 2:
                return set_stage();
            case 3:
                return set_mirrored();
            case 4:
                return set_note();
            case 5:
                return place();
            case 6:
                RC_ASSERT(undo(library).has_value() == model_.undo());
                return;
            default:
                RC_ASSERT(redo(library).has_value() == model_.redo());
                return;
        }
    }

    void compare() {
        Album found;
        for (const Photo& photo : library.photos().all()) {
            found[photo.file.name] = plain(photo);
            RC_ASSERT(photo.tags.sitting == wanted_sitting(photo));
            RC_ASSERT(std::filesystem::exists(library.photo_file(photo)));
            const bool in_trial_folder = photo.file.path.find("trial") != std::string::npos;
            RC_ASSERT(in_trial_folder == (photo.tags.sitting == trial));
        }
        RC_ASSERT(found == model_.album());
    }

  private:
    // The even ones were taken in the trial, the others after it; see write_card().
    std::optional<SittingId> wanted_sitting(const Photo& photo) {
        const auto placed = model_.album().at(photo.file.name).placed_in_trial;
        const bool in_trial = placed.value_or((photo.file.name[0] - '0') % 2 == 0);
        return in_trial ? std::optional{trial} : std::nullopt;
    }

    static Plain plain(const Photo& photo) {
        const Tags& tags = photo.tags;
        std::optional<bool> placed;
        if (tags.placed_by_hand) placed = tags.sitting.has_value();
        return {tags.angle, tags.stage, tags.mirrored, tags.note, placed};
    }

    void bring_in() {
        const std::string name = std::to_string(*rc::gen::inRange(0, card_photos)) + ".jpg";
        import_photos(library, *decoder_, {.sources = {card_ / name}});
        model_.bring_in(name);
    }

    std::vector<std::string> some() {
        std::vector<std::string> names;
        for (const auto& [name, plain] : model_.album()) {
            if (*rc::gen::arbitrary<bool>()) names.push_back(name);
        }
        return names;
    }

    std::vector<PhotoId> ids(const std::vector<std::string>& names) {
        std::vector<PhotoId> ids;
        for (const std::string& name : names) ids.push_back(library.photos().named(name).at(0).id);
        return ids;
    }

    void set_angle() {
        const auto names = some();
        std::optional<Angle> angle;
        if (*rc::gen::arbitrary<bool>()) angle = *rc::gen::elementOf(all_angles);
        tag(library, ids(names), {.angle = angle});
        model_.act(names, [&](Plain& photo) { photo.angle = angle; });
    }

    void set_stage() {
        const auto names = some();
        const Stage stage = *rc::gen::elementOf(all_stages);
        tag(library, ids(names), {.stage = stage});
        model_.act(names, [&](Plain& photo) { photo.stage = stage; });
    }

    void set_mirrored() {
        const auto names = some();
        const bool mirrored = *rc::gen::arbitrary<bool>();
        tag(library, ids(names), {.mirrored = mirrored});
        model_.act(names, [&](Plain& photo) { photo.mirrored = mirrored; });
    }

    void set_note() {
        const auto names = some();
        const std::string note = *rc::gen::element<std::string>("", "veil on", "fringe pinned");
        tag(library, ids(names), {.note = note});
        model_.act(names, [&](Plain& photo) { photo.note = note; });
    }

    void place() {
        const auto names = some();
        switch (*rc::gen::inRange(0, 3)) {
            case 0:
                place_by_hand(library, ids(names), trial);
                return model_.act(names, [](Plain& photo) { photo.placed_in_trial = true; });
            case 1:
                place_by_hand(library, ids(names), std::nullopt);
                return model_.act(names, [](Plain& photo) { photo.placed_in_trial = false; });
            default:
                leave_to_time(library, ids(names));
                return model_.act(names, [](Plain& photo) { photo.placed_in_trial.reset(); });
        }
    }

    Path card_;
    std::unique_ptr<Decoder> decoder_ = make_confined_decoder();
    Model model_;
};

void write_card(const Path& card) {
    for (int i = 0; i < card_photos; ++i) {
        const std::string hour = i % 2 == 0 ? "10" : "18";
        write_photo(card / (std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 " + hour + ":10:0" + std::to_string(i)});
    }
}

RC_GTEST_PROP(TaggingModel, AnySequenceOfTagUndoRedoAndImportEqualsThePlainModel, ()) {
    static const TemporaryFolder* const folder = [] {
        static TemporaryFolder made;
        write_card(made / "card");
        return &made;
    }();
    Both both{*folder / "card"};
    const int steps = *rc::gen::inRange(1, 25);
    for (int i = 0; i < steps; ++i) {
        both.step();
        both.compare();
    }
}

}  // namespace
}  // namespace quarterturn
