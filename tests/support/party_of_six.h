#pragma once
// A wedding whose six clients each have a look with a recipe and photos of the demo from the four
// quarters, names in several scripts and words that would break a page that does not escape them.

#include <array>

#include "indexer/disk/checksum.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {

class PartyOfSix {
  public:
    // `pictures` are JPEG files with this EXIF orientation; each client is given four in turn.
    explicit PartyOfSix(std::vector<Path> pictures, int orientation = 1)
        : pictures_(std::move(pictures)), orientation_(orientation) {
        Wedding day;
        day.name = "Vale & <Okonjo>";
        day.date = parse_date("2026-11-21").value();
        day.venue = "The Old Granary, Lower Sallowmere";
        day.ready_by = "12:30";
        for (const char* name : names) {
            Client client = client_called(name);
            client.note = "call 0123 456 789";
            day.party.push_back({library.clients().add(client), "guest \"of honour\""});
        }
        wedding = library.weddings().add(day);
        for (const PartyMember& member : day.party) add_look(member.client);
    }

    static constexpr std::array names{
        "Séraphine </h2> Vašnovič", "Ανθή Λευκοπέτρου",          "ნინო ცისფერაძე",
        "ليان الياسميني",           "Zoë O'\"Hara\" & Daughter", "美咲"};
    static constexpr const char* step = "Twist </style><script>alert(1)</script> & pin it";
    static constexpr const char* caution = "tender <left> ear";

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    WeddingId wedding;

  private:
    void add_look(ClientId client) {
        Look bun;
        bun.client = client;
        bun.wedding = wedding;
        bun.name = "low bun " + std::to_string(client.value);
        bun.id = library.looks().add(bun);
        Recipe recipe;
        recipe.cautions = caution;
        recipe.heat_tool = HeatTool{"tongs", 25, 170};
        recipe.parting = "left";
        recipe.head_plan.strokes = {{StrokeKind::parting, {{-0.3, -0.9}, {-0.3, 0}}},
                                    {StrokeKind::section, {{-0.9, 0}, {0.9, 0}}}};
        recipe.head_plan.marks = {{1, {0, 0.7}, "bun"}};
        recipe.build = {{step, 20, {{"grip", "brown", 6, true}}, 15},
                        {"Wind two pieces on the tongs.", 10, {}}};
        recipe.accessory = "pearl comb above the left ear";
        recipe.feedback = "loves it";
        library.recipes().save(bun.id, recipe, at("2026-11-07T12:00"));
        for (const Angle angle : quarter_angles) add_photo(bun, angle);
    }

    void add_photo(const Look& look, Angle angle) {
        const std::string number = std::to_string(++photos_);
        const Path source = pictures_[static_cast<std::size_t>(photos_) % pictures_.size()];
        Photo photo =
            example_photo("SECRET_NAME_" + number + ".JPG", taken_at("2026-11-07T10:12:03"));
        photo.file.orientation = orientation_;
        Bytes bytes = read_bytes(source);
        for (const char digit : number) bytes.push_back(static_cast<std::byte>(digit));  // no twins
        photo.file.sha256 = sha256(bytes);
        const PhotoId id = library.photos().add(photo);
        const Path file = library.folder() / photo.file.path;
        std::filesystem::create_directories(file.parent_path());
        write_bytes(file, bytes);
        Tags tags;
        tags.look = look.id;
        tags.stage = Stage::after;
        tags.angle = angle;
        library.history().apply({.said = "tagged", .tags = {{id, tags}}, .shifts = {}});
    }

    std::vector<Path> pictures_;
    int orientation_ = 1;
    int photos_ = 0;
};

}  // namespace quarterturn
