#include "indexer/store/own_texts.h"

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using nlohmann::json;
using TextKind = OwnText::Kind;

std::string client_named(const std::string& id) {
    return "(SELECT name FROM client WHERE client.id = " + id + ")";
}

std::string wedding_named(const std::string& id) {
    return "(SELECT name FROM wedding WHERE wedding.id = " + id + ")";
}

std::string look_named(const std::string& id) {
    return "(SELECT this.name || ' of ' || hers.name FROM look AS this JOIN client AS hers ON "
           "hers.id = this.client WHERE this.id = " +
           id + ")";
}

std::string is_signed_off(const std::string& look) {
    return "EXISTS (SELECT 1 FROM sign_off AS standing WHERE standing.look = " + look +
           " AND standing.reopened_at IS NULL)";
}

std::string is_newest_recipe(const std::string& yes, const std::string& no) {
    return "CASE WHEN number = (SELECT max(number) FROM recipe_revision AS newest WHERE "
           "newest.look = recipe_revision.look) THEN " +
           yes + " ELSE " + no + " END";
}

OwnText sealed_text(const std::string& table, const std::string& column) {
    const std::string look =
        "(SELECT signed.look FROM sign_off AS signed WHERE signed.id = " + table + ".sign_off)";
    return {table, column, TextKind::seal, "'the sign-off of the look ' || " + look_named(look),
            is_signed_off(look)};
}

std::vector<OwnText> texts_of_people() {
    std::vector<OwnText> texts{
        {"wedding", "name", TextKind::name, "'the name of the wedding on ' || date"},
        {"wedding", "venue", TextKind::words, "'the venue of the wedding ' || name"},
        {"client", "note", TextKind::words, "'the note of the client ' || name"},
        {"party_member", "role", TextKind::words,
         "'the role of ' || " + client_named("party_member.client") + " || ' in the wedding ' || " +
             wedding_named("party_member.wedding")},
        {"sitting", "note", TextKind::words,
         "'the note of the sitting of ' || " + client_named("sitting.client") +
             " || ' on ' || strftime('%Y-%m-%d', starts / 1000000000, 'unixepoch')"},
        {"timer", "name", TextKind::words,
         "'a timer of the wedding ' || " + wedding_named("timer.wedding")},
        {"kit_tick", "item", TextKind::past,
         "'what is ticked off in the kit list of the wedding ' || " +
             wedding_named("kit_tick.wedding")},
        {"inspiration", "name", TextKind::file,
         "'the picture kept with ' || " + client_named("inspiration.client")}};
    for (const char* column : {"guardian", "witness", "note"}) {
        texts.push_back({"consent", column, TextKind::past,
                         "'the consent of ' || " + client_named("consent.client") +
                             " || ', said on ' || said_on"});
    }
    texts.push_back({"consent_paper", "name", TextKind::file, "'a paper of consent'"});
    return texts;
}

std::vector<OwnText> texts_of_looks() {
    const std::string recipe = "'the recipe of the look ' || " + look_named("recipe_revision.look");
    return {
        {"look", "name", TextKind::name, "'the name of the look ' || " + look_named("look.id")},
        {"waiver", "reason", TextKind::words,
         "'the shot list of the look ' || " + look_named("waiver.look"),
         is_signed_off("waiver.look")},
        sealed_text("sealed_waiver", "reason"),
        sealed_text("sealed_photo", "tags"),
        {"sealed_photo", "name", TextKind::file, "'the file name of the photo ' || name"},
        {"sign_off", "reopened_because", TextKind::past,
         "'the reason for opening the look ' || " + look_named("sign_off.look") + " || ' again'"},
        {"recipe_revision", "recipe", TextKind::recipe, is_newest_recipe(recipe, "NULL"),
         is_signed_off("recipe_revision.look")},
        {"recipe_revision", "recipe", TextKind::past_recipe,
         is_newest_recipe("NULL", "'an earlier ' || substr(" + recipe + ", 5)")},
        {"recipe_draft", "recipe", TextKind::recipe,
         "'what is drafted of the recipe of the look ' || " + look_named("recipe_draft.look")},
        {"recipe_template", "name", TextKind::name, "'the name of the template ' || name"},
        {"recipe_template", "recipe", TextKind::recipe, "'the template ' || name"},
        {"step_tick", "words", TextKind::past,
         "'what is ticked off of the look ' || " + look_named("step_tick.look")},
        {"look_fact", "value", TextKind::words,
         "'what the look ' || " + look_named("look_fact.look") + " || ' is found by'"}};
}

std::vector<OwnText> texts_of_photos() {
    return {{"photo", "note", TextKind::words, "'the note of the photo ' || name"},
            {"photo", "accepted_because", TextKind::words,
             "'the reason for accepting the photo ' || name", is_signed_off("photo.look")},
            {"photo", "name", TextKind::file, "'the file name of the photo ' || name"},
            {"photo_credit", "name", TextKind::hers, "'the photographer''s name'"},
            {"photo_credit", "line", TextKind::hers, "'the credit line of photos by ' || name"},
            {"seen_file", "source", TextKind::trace, "NULL"}};
}

std::vector<OwnText> texts_of_uses() {
    return {{"selection", "name", TextKind::name, "'the name of the selection ' || name"},
            {"pair_filter", "name", TextKind::name, "'the name of the kept filter ' || name"},
            {"pair_filter", "words", TextKind::words, "'the words of the kept filter ' || name"},
            {"pair_filter_value", "value", TextKind::words,
             "'the values of the kept filter ' || (SELECT name FROM pair_filter WHERE "
             "pair_filter.id = pair_filter_value.filter)"},
            {"export", "photo_name", TextKind::file, "'the file name of the photo ' || photo_name"},
            {"export", "file", TextKind::past, "'entry ' || id || ' of the ledger'"},
            {"export_place", "place", TextKind::past, "'entry ' || export || ' of the ledger'"},
            {"export_taken_down", "note", TextKind::past, "'entry ' || export || ' of the ledger'"},
            {"setting", "value", TextKind::hers,
             "CASE WHEN name IN ('business name', 'business line', 'business contact', 'look "
             "families') THEN 'your ' || name || ', in Settings,' END"}};
}

bool can_be_changed(TextKind kind) {
    return kind == TextKind::words || kind == TextKind::name || kind == TextKind::recipe ||
           kind == TextKind::hers;
}

bool is_recipe(TextKind kind) {
    return kind == TextKind::recipe || kind == TextKind::past_recipe;
}

bool goes_where_sure(TextKind kind) {
    return kind != TextKind::hers && kind != TextKind::file && kind != TextKind::trace;
}

template <class Visit>
void each_string(json& value, Visit visit) {
    if (value.is_string()) {
        visit(value.get_ref<std::string&>());
    } else if (value.is_structured()) {
        for (json& each : value) each_string(each, visit);
    }
}

// The texts within one value of the column.
std::vector<std::string> texts_within(TextKind kind, const std::string& value) {
    if (!is_recipe(kind)) return {value};
    std::vector<std::string> texts;
    json recipe = json::parse(value, nullptr, false);
    each_string(recipe, [&](const std::string& text) { texts.push_back(text); });
    return texts;
}

std::string without_names(TextKind kind, const std::string& value, const SoughtNames& names) {
    const std::string_view instead = kind == TextKind::seal ? erased_from_seal : erased_name;
    if (!is_recipe(kind)) return names.without(value, instead);
    json recipe = json::parse(value, nullptr, false);
    bool any = false;
    each_string(recipe, [&](std::string& text) {
        std::string rest = names.without(text, instead);
        any = any || rest != text;
        text = std::move(rest);
    });
    return any ? recipe.dump() : value;
}

struct Saying {
    std::string said;
    bool surely = false;
};

// Empty where none is said. What is surely said comes first.
Saying saying_in(TextKind kind, const std::string& value, const SoughtNames& names) {
    Saying found;
    for (const std::string& text : texts_within(kind, value)) {
        for (const NameSaid& name : names.said_in(text)) {
            if (!found.said.empty() && (found.surely || !name.surely)) continue;
            found = {text.substr(name.begin, name.end - name.begin), name.surely};
        }
    }
    return found;
}

class PlaceFinder {
  public:
    PlaceFinder(Database& database, const SoughtNames& names)
        : database_(database), names_(names) {}

    std::vector<NamedPlace> places(bool recipes_alone = false) {
        for (const OwnText& text : own_texts()) {
            if (!recipes_alone || text.kind == TextKind::recipe) look_into(text);
        }
        return std::move(places_);
    }

  private:
    void look_into(const OwnText& text) {
        Statement rows(database_, "SELECT " + text.column + ", " + text.place + ", " +
                                      text.signed_off + " FROM \"" + text.table + "\" WHERE " +
                                      text.column + " <> ''");
        while (rows.step()) {
            std::string value;
            std::optional<std::string> place;
            bool signed_off = false;
            rows.read(value, place, signed_off);
            if (place) take(text.kind, value, *place, signed_off);
        }
    }

    void take(TextKind kind, const std::string& value, const std::string& place, bool signed_off) {
        const Saying saying = saying_in(kind, value, names_);
        if (saying.said.empty()) return;
        const bool goes = saying.surely && goes_where_sure(kind);
        const bool as_it_came = saying.surely && kind == TextKind::file;
        if (!goes && !as_it_came && !can_be_changed(kind)) return;
        if (std::ranges::find(places_, place, &NamedPlace::place) != places_.end()) return;
        places_.push_back({place, saying.said, goes, as_it_came, signed_off});
    }

    Database& database_;
    const SoughtNames& names_;
    std::vector<NamedPlace> places_;
};

std::vector<std::string> values_in(Database& database, const OwnText& text) {
    return Statement(database, "SELECT DISTINCT " + text.column + " FROM \"" + text.table +
                                   "\" WHERE " + text.column + " <> ''")
        .rows([](const Statement& row) {
            std::string value;
            row.read(value);
            return value;
        });
}

void replace_value(Database& database, const OwnText& text, const std::string& value,
                   const std::string& rest) {
    const std::string update =
        "UPDATE OR IGNORE \"" + text.table + "\" SET " + text.column + " = ?1";
    const std::string where = " WHERE " + text.column + " = ?2";
    if (text.kind == TextKind::name) {
        return run(database, update + ", folded_name = ?3" + where, rest, value, folded(rest));
    }
    run(database, update + where, rest, value);
}

}  // namespace

const std::vector<OwnText>& own_texts() {
    static const std::vector<OwnText> all = [] {
        std::vector<OwnText> texts;
        for (auto part :
             {texts_of_people(), texts_of_looks(), texts_of_photos(), texts_of_uses()}) {
            std::ranges::move(part, std::back_inserter(texts));
        }
        return texts;
    }();
    return all;
}

std::vector<NamedPlace> places_naming(Database& database, const SoughtNames& names) {
    return PlaceFinder(database, names).places();
}

std::vector<NamedPlace> recipes_naming(Database& database, const SoughtNames& names) {
    return PlaceFinder(database, names).places(true);
}

void take_names_out(Database& database, const SoughtNames& names) {
    for (const OwnText& text : own_texts()) {
        for (const std::string& value : values_in(database, text)) {
            if (text.kind == TextKind::trace) {
                if (!saying_in(text.kind, value, names).surely) continue;
                run(database, "DELETE FROM \"" + text.table + "\" WHERE " + text.column + " = ?",
                    value);
            } else if (goes_where_sure(text.kind)) {
                const std::string rest = without_names(text.kind, value, names);
                if (rest != value) replace_value(database, text, value, rest);
            }
        }
    }
}

}  // namespace quarterturn
