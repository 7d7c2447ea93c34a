#include "indexer/store/many_looks.h"

#include "indexer/store/photo_rows.h"
#include "indexer/store/recipe_table.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string among_looks = "IN (SELECT value FROM json_each(?)) ";

std::string json_array(const std::vector<LookId>& looks) {
    std::string text = "[";
    for (const LookId look : looks) {
        if (text.size() > 1) text += ',';
        text += std::to_string(look.value);
    }
    return text + "]";
}

std::map<LookId, Recipe> recipes_in(Statement& rows) {
    std::map<LookId, Recipe> recipes;
    while (rows.step()) {
        LookId look;
        std::string json;
        rows.read(look, json);
        recipes[look] = parse_recipe_json(json);
    }
    return recipes;
}

}  // namespace

ManyLooks::ManyLooks(Database& database, const std::vector<LookId>& looks)
    : database_(&database), ids_(json_array(looks)) {}

std::map<LookId, ShotList> ManyLooks::shot_lists() {
    std::map<LookId, ShotList> lists;
    Statement statement(*database_,
                        "SELECT look, stage, angle, need FROM shot_list "
                        "JOIN shot_line ON shot_line.list = shot_list.id WHERE look " +
                            among_looks + "ORDER BY look, place");
    statement.with(ids_);
    while (statement.step()) {
        LookId look;
        ShotLine line;
        statement.read(look, line.shot.stage, line.shot.angle, line.need);
        lists[look].push_back(line);
    }
    return lists;
}

std::map<LookId, std::vector<Waiver>> ManyLooks::waivers() {
    std::map<LookId, std::vector<Waiver>> waivers;
    Statement statement(*database_,
                        "SELECT look, stage, angle, reason FROM waiver WHERE look " + among_looks);
    statement.with(ids_);
    while (statement.step()) {
        LookId look;
        Waiver waiver;
        statement.read(look, waiver.shot.stage, waiver.shot.angle, waiver.reason);
        waivers[look].push_back(std::move(waiver));
    }
    return waivers;
}

std::map<LookId, Recipe> ManyLooks::recipes() {
    Statement statement(*database_,
                        "SELECT look, recipe FROM recipe_revision WHERE (look, number) IN (SELECT "
                        "look, max(number) FROM recipe_revision WHERE look " +
                            among_looks + "GROUP BY look)");
    return recipes_in(statement.with(ids_));
}

std::map<LookId, Recipe> ManyLooks::drafts() {
    Statement statement(*database_,
                        "SELECT look, recipe FROM recipe_draft WHERE look " + among_looks);
    return recipes_in(statement.with(ids_));
}

std::map<LookId, LocalTime> ManyLooks::signed_at() {
    std::map<LookId, LocalTime> times;
    Statement statement(
        *database_,
        "SELECT look, signed_at FROM sign_off WHERE reopened_at IS NULL AND look " + among_looks);
    statement.with(ids_);
    while (statement.step()) {
        LookId look;
        LocalTime signed_at{};
        statement.read(look, signed_at);
        times[look] = signed_at;
    }
    return times;
}

std::vector<Photo> ManyLooks::photos() {
    return select_photos(*database_,
                         "photo.look " + among_looks +
                             "OR photo.sitting IN (SELECT sitting FROM look_sitting WHERE look " +
                             among_looks + ")",
                         ids_, ids_);
}

}  // namespace quarterturn
