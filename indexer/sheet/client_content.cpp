#include "indexer/sheet/client_content.h"

#include "indexer/rules/recipe_difference.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

std::string in_one_line(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) add_part(text, "; ", line);
    return text.empty() ? "nothing" : text;
}

std::string moment_words(LocalTime time) {
    return long_date(date_of(time)) + ", " + clock_text(time);
}

TextSection weddings_section(const ClientRecord& record) {
    TextSection section{"Weddings", {}};
    for (const Wedding& wedding : record.weddings) {
        std::string text;
        for (const std::string& line : wedding_words(wedding)) add_part(text, ", ", line);
        if (!wedding.ready_by.empty()) text += ", ready by " + wedding.ready_by;
        const std::string role = role_in(wedding, record.client.id);
        section.lines.push_back(text + (role.empty() ? "" : ". In the party: " + role));
    }
    if (section.lines.empty()) section.lines.emplace_back("No wedding is recorded.");
    return section;
}

TextSection sittings_section(const ClientRecord& record) {
    TextSection section{"Sittings", {}};
    for (const Sitting& sitting : record.sittings) {
        section.lines.push_back(sitting_words(sitting));
        add_part(section.lines.back(), ". ", sitting.note);
    }
    if (section.lines.empty()) section.lines.emplace_back("No sitting is recorded.");
    return section;
}

std::string sign_off_line(const SignOff& sign_off) {
    const std::size_t photos = sign_off.seal.photos.size();
    std::string text = "Signed off " + moment_words(sign_off.signed_at) + ", " +
                       std::to_string(photos) +
                       (photos == 1 ? " photo sealed." : " photos sealed.");
    if (sign_off.reopened_at) {
        text += " Opened again " + moment_words(*sign_off.reopened_at) + ": " +
                sign_off.reopened_because;
    }
    return text;
}

TextSection look_section(const ClientRecord& record, const LookRecord& each) {
    TextSection section{look_words(each.look), {}};
    for (const Sitting& sitting : record.sittings) {
        const auto& worked_on = each.look.sittings;
        if (std::ranges::find(worked_on, sitting.id) == worked_on.end()) continue;
        section.lines.push_back("Worked on: " + sitting_words(sitting));
    }
    for (const SignOff& sign_off : each.sign_offs) section.lines.push_back(sign_off_line(sign_off));
    if (each.sign_offs.empty()) section.lines.emplace_back("Not signed off.");
    if (each.recipes.empty()) section.lines.emplace_back("No recipe is saved.");
    return section;
}

TextSection changes_section(std::string heading, const Recipe& was, const Recipe& is) {
    TextSection section{std::move(heading), {}};
    for (const ToldChange& change : told_changes(was, recipe_difference(was, is))) {
        section.lines.push_back(change.what + ". Was: " + in_one_line(change.was) +
                                ". Is: " + in_one_line(change.is));
    }
    return section;
}

std::vector<TextSection> changes_of(const LookRecord& each) {
    std::vector<TextSection> changes;
    const auto& revisions = each.recipes;
    if (each.draft) {
        changes.push_back(changes_section("Written since, not saved yet",
                                          revisions.empty() ? Recipe{} : revisions.back().recipe,
                                          each.draft->recipe));
    }
    for (std::size_t i = revisions.size(); i > 1; --i) {
        const RecipeRevision& is = revisions[i - 1];
        changes.push_back(changes_section("Changed by revision " + std::to_string(is.number) +
                                              ", saved " + moment_words(is.saved_at),
                                          revisions[i - 2].recipe, is.recipe));
    }
    return changes;
}

LookSection whole_look_section(const ClientRecord& record, const LookRecord& each) {
    LookSection section{look_section(record, each), {}, changes_of(each)};
    if (!each.recipes.empty()) {
        section.recipe = recipe_words(each.recipes.back());
        section.recipe->heading += ", saved " + moment_words(each.recipes.back().saved_at);
    }
    return section;
}

// Her own sitting that the photo is of; nothing where it is of none, or of another client's.
std::optional<SittingId> place_of(const Photo& photo, const ClientRecord& record) {
    const auto of_photo = [&](const Sitting& sitting) { return photo.tags.sitting == sitting.id; };
    return std::ranges::any_of(record.sittings, of_photo) ? photo.tags.sitting : std::nullopt;
}

std::vector<PhotoSection> photo_sections(const ClientRecord& record) {
    std::vector<PhotoSection> sections;
    const auto add = [&](std::string heading, std::optional<SittingId> sitting) {
        PhotoSection section{std::move(heading), {}};
        for (const Photo& photo : record.photos) {
            if (place_of(photo, record) == sitting) section.photos.push_back(photo);
        }
        if (!section.photos.empty()) sections.push_back(std::move(section));
    };
    for (const Sitting& sitting : record.sittings) add(sitting_words(sitting), sitting.id);
    add("Of no sitting of hers", std::nullopt);
    return sections;
}

TextSection brought_section(const ClientRecord& record) {
    TextSection section{"Pictures that she brought along, somebody else's work, not shown here",
                        {}};
    for (const Inspiration& picture : record.brought) {
        section.lines.push_back(picture.name + ", kept " + moment_words(picture.kept_at));
    }
    return section;
}

}  // namespace

ClientContent client_content(const ClientRecord& record) {
    ClientContent content;
    content.facts = {
        weddings_section(record), sittings_section(record), {"Consents", consent_lines(record)}};
    if (!record.brought.empty()) content.facts.push_back(brought_section(record));
    for (const LookRecord& each : record.looks) {
        content.looks.push_back(whole_look_section(record, each));
    }
    content.photos = photo_sections(record);
    return content;
}

}  // namespace quarterturn
