#include <algorithm>
#include <cstdio>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/checksum.h"
#include "indexer/disk/clock.h"
#include "indexer/disk/write_once.h"
#include "indexer/portfolio/hair_only.h"
#include "indexer/store/hair_only_table.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

constexpr std::int64_t most_picture_bytes = std::int64_t{1} << 30;

struct HairOnlyOptions {
    std::string photo;
    std::string to;
    Text keep;
    Text cover;
    std::string confirm;
    bool forget = false;
};

// "0,0,1,0.4": left, top, width and height in shares of the picture.
HairOnly box_from(HairOnlyWay way, const std::string& text) {
    HairOnly how;
    how.way = way;
    int read = 0;
    const int values = std::sscanf(text.c_str(), "%lf,%lf,%lf,%lf%n", &how.x, &how.y, &how.width,
                                   &how.height, &read);
    const bool whole = values == 4 && read == static_cast<int>(text.size());
    const bool inside = how.x >= 0 && how.y >= 0 && how.width > 0 && how.height > 0 &&
                        how.x + how.width <= 1.000001 && how.y + how.height <= 1.000001;
    if (whole && inside) return how;
    throw WrongUse("'" + text +
                   "' is no part of the picture: write left, top, width and height as shares of "
                   "it, as in 0,0,1,0.4 for all of the upper four tenths.");
}

std::vector<HairOnlyPicture> pictures_of(Library& library, Decoder& decoder, const Photo& photo,
                                         const HairOnlyOptions& options) {
    const Date today = date_of(local_now());
    if (options.keep) {
        return {make_hair_only(library, decoder, photo, box_from(HairOnlyWay::crop, *options.keep),
                               today)};
    }
    if (options.cover) {
        return {make_hair_only(library, decoder, photo,
                               box_from(HairOnlyWay::cover, *options.cover), today)};
    }
    return propose_hair_only(library, decoder, photo, today);
}

json box_json(const HairOnly& how) {
    return {{"way", word(how.way)}, {"x", how.x},           {"y", how.y},
            {"width", how.width},   {"height", how.height}, {"sha256", how.sha256}};
}

json confirmed_json(const std::optional<HairOnly>& confirmed) {
    if (!confirmed) return {};
    json told = box_json(*confirmed);
    told["confirmed_at"] = iso_text(confirmed->confirmed_at);
    return told;
}

std::string percent(double share) {
    return std::to_string(static_cast<int>(share * 100 + 0.5)) + " %";
}

std::string words_of(const HairOnlyPicture& picture) {
    const HairOnly& how = picture.how;
    std::string words = how.way == HairOnlyWay::crop ? "Crop, keeps " : "Cover over ";
    words += percent(how.width) + " of the width and " + percent(how.height) + " of the height";
    return words + (picture.face_found ? "; what may be a face was found in it"
                                       : "; no face was found in it");
}

// Each in a new file, to be looked at; but none in which a face was found.
void write_pictures_to_look_at(Reply& reply, Library& library, const Photo& photo,
                               const std::vector<HairOnlyPicture>& pictures,
                               const std::string& folder) {
    int number = 0;
    for (const HairOnlyPicture& picture : pictures) {
        json told = box_json(picture.how);
        told["face_found"] = picture.face_found;
        told["file"] = nullptr;
        std::string line = words_of(picture);
        if (!folder.empty() && picture.face_found) line += ": not written";
        if (!folder.empty() && !picture.face_found) {
            library.disk().make_folders(std::filesystem::absolute(folder));
            const Path file = Path(folder) / ("hair-only-" + std::to_string(photo.id.value) + "-" +
                                              picture.how.sha256.substr(0, 8) + ".jpg");
            if (!library.disk().exists(file)) write_once(library.disk(), file, picture.jpeg);
            told["file"] = file.string();
            line += ": " + file.string();
        }
        reply.lines.push_back(std::to_string(++number) + "  " + line);
        reply.data["pictures"].push_back(std::move(told));
    }
}

Reply confirm(Library& library, Decoder& decoder, const Photo& photo,
              const std::vector<HairOnlyPicture>& pictures, const std::string& file) {
    const std::string looked_at = sha256(library.disk().read(file, most_picture_bytes));
    const auto found = std::ranges::find_if(
        pictures, [&](const HairOnlyPicture& picture) { return picture.how.sha256 == looked_at; });
    if (found == pictures.end()) {
        throw WrongUse(file +
                       " is not what the program makes of the photo: confirm one of the pictures "
                       "that --to wrote, with the same --keep or --cover.");
    }
    const HairOnly confirmed = confirm_hair_only(library, decoder, found->how, local_now());
    return {{photo.file.name + ": confirmed. Where only her hair may be shown, qturn portfolio "
                               "export and gallery write this picture in its place.",
             hair_only_caution},
            {{"photo", short_json(photo)},
             {"pictures", json::array()},
             {"confirmed", confirmed_json(confirmed)},
             {"caution", hair_only_caution}}};
}

Reply proposals(Library& library, const Photo& photo, const std::vector<HairOnlyPicture>& pictures,
                const std::string& folder) {
    const auto confirmed = HairOnlyTable(library.database()).of(photo.id);
    Reply reply{{photo.file.name},
                {{"photo", short_json(photo)},
                 {"pictures", json::array()},
                 {"confirmed", confirmed_json(confirmed)},
                 {"caution", hair_only_caution}}};
    if (confirmed) {
        reply.lines.push_back("Confirmed on " + iso_text(date_of(confirmed->confirmed_at)) + ".");
    }
    write_pictures_to_look_at(reply, library, photo, pictures, folder);
    if (pictures.empty()) {
        reply.lines.emplace_back(
            "No face was found to leave out: tag the angle first, or name the part to keep with "
            "--keep.");
    } else {
        reply.lines.emplace_back("Look at one that --to wrote, then confirm it with --confirm.");
    }
    reply.lines.emplace_back(hair_only_caution);
    return reply;
}

Reply hair_only(Session& session, const HairOnlyOptions& options) {
    if (options.keep && options.cover) throw WrongUse("Either --keep a part, or --cover one.");
    Library& library = session.library();
    const Photo photo = find_photo(library, options.photo);
    if (options.forget) {
        forget_hair_only(library, photo);
        return {{photo.file.name + ": no picture without her face counts any longer."},
                {{"photo", short_json(photo)},
                 {"pictures", json::array()},
                 {"confirmed", nullptr},
                 {"caution", hair_only_caution}}};
    }
    if (!options.to.empty()) refuse_in_library(session, options.to);
    const auto decoder = make_confined_decoder();
    const auto pictures = pictures_of(library, *decoder, photo, options);
    if (!options.confirm.empty()) {
        return confirm(library, *decoder, photo, pictures, options.confirm);
    }
    return proposals(library, photo, pictures, options.to);
}

}  // namespace

void add_hair_only_command(CommandSet& commands) {
    const auto options = std::make_shared<HairOnlyOptions>();
    auto command = commands.add(
        {"photo hair-only",
         "Proposes crops and covers that leave a face out, and takes down which one you have "
         "looked at and confirm.",
         "qturn photo hair-only IMG_0012.jpg --to ~/look-at-these"},
        [options](Session& session) { return hair_only(session, *options); });
    command.argument("PHOTO", options->photo, "By name, number or SHA-256");
    command.option("--to FOLDER", options->to, "Write the pictures here, to be looked at");
    command.option("--keep PART", options->keep,
                   "The part to keep instead: left, top, width and height in shares of the "
                   "picture, as in 0,0,1,0.4");
    command.option("--cover PART", options->cover, "The part to cover instead");
    command.option("--confirm FILE", options->confirm,
                   "You looked at this picture, and it shows no face");
    command.flag("--forget", options->forget, "What was confirmed counts no longer");
}

}  // namespace quarterturn
