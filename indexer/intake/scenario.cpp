#include "indexer/intake/scenario.h"

#include "indexer/intake/json_entry.h"

namespace quarterturn {
namespace {

std::string look_setting(const std::string& key) {
    return "scenario look " + key;
}

// Ids of one kind by the keys that the file gives them.
template <class RowId>
class Keys {
  public:
    explicit Keys(std::string kind) : kind_(std::move(kind)) {}

    void add(const JsonEntry& entry, RowId id) {
        const std::string key = entry.needed("key");
        if (!ids_.emplace(key, id).second)
            entry.wrong("has the key '" + key + "' of another " + kind_);
    }

    RowId named(const JsonEntry& entry, const std::string& key) const {
        const auto found = ids_.find(key);
        if (found == ids_.end())
            entry.wrong("names the " + kind_ + " '" + key + "', who or which is not in the file");
        return found->second;
    }

    std::optional<RowId> of(const JsonEntry& entry, const char* field) const {
        return entry.has(field) ? std::optional{named(entry, entry.needed(field))} : std::nullopt;
    }

  private:
    std::string kind_;
    std::map<std::string, RowId> ids_;
};

class ScenarioLoader {
  public:
    ScenarioLoader(Library& library, const JsonEntry& file, LocalTime now)
        : library_(library), file_(file), now_(now) {}

    ScenarioReport run() {
        add_business();
        for (const JsonEntry& entry : file_.entries("clients", "client")) add_client(entry);
        for (const JsonEntry& entry : file_.entries("weddings", "wedding")) add_wedding(entry);
        for (const JsonEntry& entry : file_.entries("sittings", "sitting")) add_sitting(entry);
        for (const JsonEntry& entry : file_.entries("looks", "look")) add_look(entry);
        return report_;
    }

  private:
    void add_business() {
        if (!file_.has("business")) return;
        const JsonEntry business{file_.field("business"), "the business"};
        library_.settings().set(business_name_setting, business.text("name"));
        library_.settings().set(business_line_setting, business.text("line"));
    }

    void add_client(const JsonEntry& entry) {
        const Client client{.id = {}, .name = entry.needed("name"), .note = entry.text("note")};
        clients_.add(entry, library_.clients().add(client));
        ++report_.clients;
    }

    void add_wedding(const JsonEntry& entry) {
        Wedding wedding;
        wedding.name = entry.needed("name");
        wedding.date = entry.parsed("date", parse_date, "2026-11-07");
        wedding.venue = entry.text("venue");
        wedding.ready_by = entry.text("ready_by");
        for (const JsonEntry& member : entry.entries("party", "party member")) {
            wedding.party.push_back(
                {clients_.named(member, member.needed("client")), member.text("role")});
        }
        const WeddingId id = library_.weddings().add(wedding);
        weddings_.add(entry, id);
        add_morning(entry, id);
        ++report_.weddings;
    }

    void add_morning(const JsonEntry& entry, WeddingId wedding) {
        Morning morning;
        for (const JsonEntry& member : entry.entries("party", "party member")) {
            MorningWish wish;
            wish.client = clients_.named(member, member.needed("client"));
            wish.ready_by = member.parsed_if_there("ready_by", parse_minute, "11:45");
            wish.first = member.flag("first");
            wish.last = member.flag("last");
            if (member.has("minutes")) wish.work = work_in(member);
            morning.wishes.push_back(wish);
        }
        library_.mornings().save(wedding, morning);
    }

    static ChairWork work_in(const JsonEntry& member) {
        std::vector<int> minutes;
        for (const auto& number : member.field("minutes")) {
            if (!number.is_number_unsigned()) break;
            minutes.push_back(number.get<int>());
        }
        if (minutes.size() != member.field("minutes").size() ||
            (minutes.size() != 1 && minutes.size() != 4)) {
            member.wrong("has minutes that are neither one number nor four");
        }
        if (minutes.size() == 1) return {.before = minutes[0]};
        return {minutes[0], minutes[1], minutes[2], minutes[3]};
    }

    void add_sitting(const JsonEntry& entry) {
        Sitting sitting;
        sitting.client = clients_.named(entry, entry.needed("client"));
        sitting.wedding = weddings_.of(entry, "wedding");
        sitting.kind = entry.parsed("kind", parse_sitting_kind, "trial");
        sitting.starts = entry.parsed("starts", parse_local_time, "2026-11-07T10:00");
        sitting.ends = entry.parsed("ends", parse_local_time, "2026-11-07T12:00");
        sitting.note = entry.text("note");
        sittings_.add(entry, library_.sittings().add(sitting));
        ++report_.sittings;
    }

    void add_look(const JsonEntry& entry) {
        Look look;
        look.client = clients_.named(entry, entry.needed("client"));
        look.wedding = weddings_.of(entry, "wedding");
        look.name = entry.needed("name");
        look.worn = entry.parsed("worn", parse_worn, "ceremony");
        for (const std::string& key : entry.texts("sittings")) {
            look.sittings.push_back(sittings_.named(entry, key));
        }
        const LookId id = library_.looks().add(look);
        looks_.add(entry, id);
        library_.settings().set(look_setting(entry.needed("key")), std::to_string(id.value));
        if (entry.has("recipe")) {
            library_.recipes().save(id, parse_recipe_json(entry.field("recipe").dump()), now_);
        }
        ++report_.looks;
    }

    Library& library_;
    const JsonEntry& file_;
    LocalTime now_;
    Keys<ClientId> clients_{"client"};
    Keys<WeddingId> weddings_{"wedding"};
    Keys<SittingId> sittings_{"sitting"};
    Keys<LookId> looks_{"look"};
    ScenarioReport report_;
};

Photo photo_of(Library& library, const JsonEntry& entry) {
    const std::string name = Path{entry.needed("file")}.filename().string();
    const std::vector<Photo> photos = library.photos().named(name);
    if (photos.empty()) {
        entry.wrong("names the photo " + name + ", which is not in the library: bring it in first");
    }
    if (photos.size() > 1) {
        entry.wrong("names the photo " + name + ", and there are " + std::to_string(photos.size()) +
                    " of that name in the library: tag them by hand");
    }
    return photos.front();
}

LookId look_of(Library& library, const JsonEntry& entry) {
    const std::string key = entry.needed("look");
    const auto id = library.settings().get(look_setting(key));
    if (!id) {
        entry.wrong("names the look '" + key +
                    "', which no scenario has brought in: load that first");
    }
    return LookId{std::stoll(*id)};
}

TagChange tag_change(Library& library, const JsonEntry& entry) {
    const Photo photo = photo_of(library, entry);
    TagChange change{photo.id, photo.tags};
    change.tags.angle = entry.parsed_if_there("angle", parse_angle, "left three-quarter");
    change.tags.stage = entry.parsed_if_there("stage", parse_stage, "after");
    if (entry.has("look")) change.tags.look = look_of(library, entry);
    change.tags.mirrored = entry.flag("mirrored");
    return change;
}

}  // namespace

ScenarioReport load_scenario(Library& library, std::string_view json, LocalTime now) {
    const nlohmann::json parsed = parse_json(json);
    const JsonEntry file{parsed, "the file"};
    Transaction transaction{library.database()};
    const ScenarioReport report = ScenarioLoader{library, file, now}.run();
    transaction.commit();
    return report;
}

int load_tags(Library& library, std::string_view json) {
    const nlohmann::json parsed = parse_json(json);
    const JsonEntry file{parsed, "the file"};
    std::vector<TagChange> tags;
    for (const JsonEntry& entry : file.entries("photos", "photo")) {
        tags.push_back(tag_change(library, entry));
    }
    const int count = static_cast<int>(tags.size());
    library.history().apply({.said = "tagged " + std::to_string(count) + " photos from a list",
                             .tags = std::move(tags),
                             .shifts = {}});
    return count;
}

}  // namespace quarterturn
