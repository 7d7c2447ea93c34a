#include "indexer/sheet/contact_content.h"

#include <set>

#include "indexer/rules/ring.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

bool stands_for(const Photo& photo, const Shot& shot) {
    return photo.tags.stage == shot.stage && photo.tags.angle == shot.angle;
}

bool better(const Photo& one, const Photo& other) {
    if (usable(one) != usable(other)) return usable(one);
    return one.measures.focus > other.measures.focus;
}

class ContactContent {
  public:
    ContactContent(const LookState& state, const SheetWishes& wishes, const Path& folder)
        : state_(state), wishes_(wishes), folder_(folder) {}

    SheetContent make() {
        SheetContent content;
        content.title = look_words(state_.look) + ", " + state_.client.name;
        content.header = header();
        for (const Stage stage : all_stages) add(content.bands, quarter_band(stage));
        add(content.bands, further_band());
        if (state_.recipe) content.recipe = recipe_words(*state_.recipe);
        add(content.more, more_frames());
        return content;
    }

  private:
    static void add(std::vector<SheetBand>& bands, SheetBand band) {
        if (!band.cells.empty()) bands.push_back(std::move(band));
    }

    SheetHeader header() const {
        SheetHeader header;
        header.client = state_.client.name;
        header.lines = {look_words(state_.look)};
        std::ranges::copy(wedding_words(state_.wedding), std::back_inserter(header.lines));
        header.ring = ring_of(state_.coverage);
        header.state = sign_off_words(state_);
        header.sentence = state_.coverage.next_shot;
        header.again = state_.client.name + " · " + look_words(state_.look) + " · " + header.state;
        return header;
    }

    bool asked_for(Stage stage) const { return stage != Stage::during || wishes_.during; }

    const CoverageLine* line_of(const Shot& shot) const {
        const auto& lines = state_.coverage.lines;
        const auto found = std::ranges::find(
            lines, shot, [](const CoverageLine& line) { return line.wanted.shot; });
        return found == lines.end() ? nullptr : &*found;
    }

    const Photo* photo_with(PhotoId id) const {
        const auto found = std::ranges::find(state_.photos, id, &Photo::id);
        return found == state_.photos.end() ? nullptr : &*found;
    }

    const Photo* photo_for(const Shot& shot) const {
        const CoverageLine* line = line_of(shot);
        if (line != nullptr) return line->photo ? photo_with(*line->photo) : nullptr;
        const Photo* best = nullptr;
        for (const Photo& photo : state_.photos) {
            if (!stands_for(photo, shot)) continue;
            if (best == nullptr || better(photo, *best)) best = &photo;
        }
        return best;
    }

    SheetCell cell_of(const Photo& photo) {
        shown_.insert(photo.id);
        return photo_cell(photo, folder_);
    }

    SheetCell cell_for(const Shot& shot) {
        const CoverageLine* line = line_of(shot);
        if (const Photo* photo = photo_for(shot)) {
            SheetCell cell = cell_of(*photo);
            if (line != nullptr && line->verdict == Coverage::waived) {
                add_part(cell.note, " · ", "waived: " + line->waived_because);
            }
            return cell;
        }
        SheetCell cell;
        cell.title = capitalised(word(shot.angle));
        if (line == nullptr)
            cell.empty = "not on the shot list";
        else if (line->verdict == Coverage::waived)
            cell.empty = waived_words(shot, line->waived_because);
        else
            cell.empty = missing_words(shot, line->wanted.need);
        return cell;
    }

    SheetBand quarter_band(Stage stage) {
        const auto wanted = [&](Angle angle) {
            return line_of({stage, angle}) != nullptr || photo_for({stage, angle}) != nullptr;
        };
        SheetBand band{capitalised(word(stage)), {}};
        if (!asked_for(stage) || std::ranges::none_of(quarter_angles, wanted)) return {};
        for (const Angle angle : quarter_angles) band.cells.push_back(cell_for({stage, angle}));
        return band;
    }

    // Worth a frame: there is a photo, she has waived it, or the look needs it.
    bool worth_a_frame(const Shot& shot) const {
        const CoverageLine* line = line_of(shot);
        if (photo_for(shot) != nullptr) return true;
        return line != nullptr &&
               (line->wanted.need == Need::required || line->verdict == Coverage::waived);
    }

    SheetBand further_band() {
        SheetBand band{"Further angles", {}};
        for (const Stage stage : {Stage::after, Stage::during, Stage::before}) {
            for (const Angle angle : further_angles) {
                if (!asked_for(stage) || !worth_a_frame({stage, angle})) continue;
                band.cells.push_back(cell_for({stage, angle}));
                if (stage != Stage::after) {
                    add_part(band.cells.back().title, ", ", word(stage));
                }
            }
        }
        return band;
    }

    SheetBand more_frames() const {
        SheetBand band{"More frames", {}};
        for (const Photo& photo : state_.photos) {
            if (!usable(photo) || shown_.contains(photo.id)) continue;
            band.cells.push_back(frame_cell(photo, folder_));
        }
        return band;
    }

    const LookState& state_;
    const SheetWishes& wishes_;
    const Path& folder_;
    std::set<PhotoId> shown_;
};

}  // namespace

SheetContent contact_content(const LookState& state, const SheetWishes& wishes,
                             const Path& library_folder) {
    return ContactContent(state, wishes, library_folder).make();
}

}  // namespace quarterturn
