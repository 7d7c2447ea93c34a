#pragma once
// A look that lacks nothing: files on the disk, tagged photos of every required shot, a recipe.

#include <fstream>

#include "indexer/looks/sign_off.h"
#include "tests/support/example_library.h"

namespace quarterturn {

inline bool holds(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

inline Recipe whole_recipe() {
    Recipe recipe;
    recipe.hair = "washed the evening before";
    recipe.cautions = "none known";
    recipe.prep = {{"mousse", "two walnuts", "lengths"}};
    recipe.sections = "crown, two sides, nape";
    recipe.parting = "left";
    recipe.build = {{"twist into a low bun", 20, {{"hairpins", "bronze", 14, true}}}};
    recipe.accessory = "pearl comb above the left ear";
    recipe.feedback = "loves it, yes";
    recipe.feedback_details.yes_on = parse_date("2026-11-07");
    recipe.feedback_details.yes_how = "in the chair";
    recipe.hands_on_minutes = 60;
    return recipe;
}

struct WholeLook : ExampleLibrary {
    WholeLook() {
        for (const ShotLine& line : default_shot_list()) {
            if (line.need != Need::required) continue;
            add_photo("IMG_" + std::to_string(411 + photos.size()) + ".JPG", line.shot);
        }
        library.recipes().save(look, whole_recipe(), at("2026-11-07T12:00"));
    }

    PhotoId add_photo(const std::string& name, const Shot& shot) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:05:00"));
        const std::string contents = "the bytes of photo number " + std::to_string(photos.size());
        photo.file.path = "photos/2026/" + std::to_string(photos.size()) + ".jpg";
        photo.file.sha256 = sha256(contents);
        const PhotoId id = library.photos().add(photo);
        write_file(photo, contents);
        tag(id, [&](Tags& tags) {
            tags.look = look;
            tags.stage = shot.stage;
            tags.angle = shot.angle;
        });
        photos.push_back(id);
        return id;
    }

    void write_file(const Photo& photo, const std::string& contents) {
        const Path file = library.photo_file(photo);
        std::filesystem::create_directories(file.parent_path());
        std::ofstream(file, std::ios::binary) << contents;
    }

    template <class Change>
    void tag(PhotoId photo, Change change) {
        Tags tags = library.photos().find(photo)->tags;
        change(tags);
        library.history().apply({"tagged a photo", {{photo, tags}}, {}});
    }

    LookState state() { return look_state(library, look); }
    std::vector<std::string> sign() { return sign_off(library, look, noon); }
    void export_to(const Path& target) { export_record(library, look, target, noon); }

    LocalTime noon = at("2026-11-07T12:10:00");
    std::vector<PhotoId> photos;
};

}  // namespace quarterturn
