#include "indexer/looks/take_down.h"

#include <algorithm>

#include "indexer/looks/board_words.h"
#include "indexer/looks/recipe_findings.h"

namespace quarterturn {
namespace {

constexpr std::array cautions_of_every_head{
    "Never pull: a pin that does not come is still crossed with another one.",
    "Stop when it hurts, and ask her.",
    "Hot tools and spray only in the hands of somebody who knows them."};

std::optional<Recipe> recipe_of(Library& library, LookId look) {
    if (const auto revision = library.recipes().current(look)) return revision->recipe;
    if (const auto draft = library.recipes().draft(look)) return draft->recipe;
    return std::nullopt;
}

// The looks at both ends, and the recipe that says how to get from one to the other.
struct Ends {
    std::optional<Look> from;
    std::optional<Look> to;
    std::optional<Recipe> recipe;
    LookId told_in;
};

// The other look of hers for the same wedding that is worn in the evening.
std::optional<Look> evening_look(Library& library, const Look& first) {
    for (const Look& other : library.looks().of_client(first.client)) {
        if (other.id != first.id && other.wedding == first.wedding && other.worn == Worn::evening) {
            return other;
        }
    }
    return std::nullopt;
}

Ends told_in(Library& library, const Look& look, const Recipe& recipe) {
    if (recipe.second_look->from.empty()) {
        return {look, evening_look(library, look), recipe, look.id};
    }
    return {first_look_of(library, look, recipe), look, recipe, look.id};
}

Ends ends_of(Library& library, const Look& look) {
    const auto own = recipe_of(library, look.id);
    if (own && own->second_look) return told_in(library, look, *own);
    for (const Look& other : library.looks().of_client(look.client)) {
        const auto recipe = recipe_of(library, other.id);
        if (other.id == look.id || !recipe || !recipe->second_look) continue;
        const Ends ends = told_in(library, other, *recipe);
        if ((ends.from && ends.from->id == look.id) || (ends.to && ends.to->id == look.id)) {
            return ends;
        }
    }
    return {std::nullopt, look, own, look.id};
}

std::string name_of(const std::optional<Look>& look) {
    return look ? look->name : std::string{};
}

class TakeDownGatherer {
  public:
    TakeDownGatherer(Library& library, const Look& look)
        : library_(library), ends_(ends_of(library, look)) {
        result_.client = library.clients().find(look.client).value_or(Client{});
        if (look.wedding) {
            result_.wedding = library.weddings().find(*look.wedding).value_or(Wedding{}).name;
        }
        told_in_ = library.looks().find(ends_.told_in).value_or(look).name;
    }

    TakeDown gather() {
        result_.from = name_of(ends_.from);
        result_.to = name_of(ends_.to);
        take_words();
        if (const auto first = recipe_of_first()) result_.places = drawing_with_accessories(*first);
        result_.before = shots_of(ends_.from);
        result_.after = shots_of(ends_.to);
        add_photo_lacks();
        add_cautions();
        return std::move(result_);
    }

  private:
    std::optional<Recipe> recipe_of_first() {
        return ends_.from ? recipe_of(library_, ends_.from->id) : std::nullopt;
    }

    void lack(const std::string& what) {
        result_.lacks.push_back("The recipe of " + told_in_ + " does not say " + what +
                                ": write it under \"Second look\".");
    }

    void take_words() {
        if (!ends_.recipe || !ends_.recipe->second_look) {
            lack("how the hair is let down");
            return;
        }
        const SecondLook& second = *ends_.recipe->second_look;
        if (!second.from.empty()) result_.from = second.from;
        result_.at = second.at;
        result_.done_by = second.done_by;
        result_.taken_out = second.taken_out;
        result_.stays = second.stays;
        result_.steps = second.steps;
        if (second.steps.empty()) lack("the steps, one after the other");
        if (second.taken_out.empty()) lack("which pins are taken out");
        if (second.stays.empty()) lack("what stays in");
        if (second.at.empty() || second.done_by.empty()) lack("when, and who does it");
        if (ends_.to && ends_.to->id == ends_.told_in) add_step_photos();
    }

    void add_step_photos() {
        for (const Step& step : ends_.recipe->build) {
            for (const std::string& sha256 : step.photos) {
                const auto id = library_.photos().with_sha256(sha256);
                const auto photo = id ? library_.photos().find(*id) : std::nullopt;
                if (photo) result_.during.push_back(*photo);
            }
        }
    }

    std::vector<BoardShot> shots_of(const std::optional<Look>& look) {
        if (!look) return {};
        std::vector<BoardShot> shots = board_shots(library_, look_state(library_, look->id));
        std::erase_if(shots, [](const BoardShot& shot) { return !shot.photo; });
        return shots;
    }

    void add_photo_lacks() {
        if (result_.before.empty()) {
            result_.lacks.emplace_back("There is no photo of the look before it is let down.");
        }
        if (result_.after.empty()) {
            result_.lacks.emplace_back("There is no photo of what it should look like after.");
        }
    }

    void add_cautions() {
        for (const auto& recipe : {recipe_of_first(), ends_.recipe}) {
            if (!recipe) continue;
            for (const std::string& line : caution_lines(*recipe)) add(line);
        }
        for (const char* line : cautions_of_every_head) add(line);
    }

    void add(const std::string& caution) {
        if (std::ranges::find(result_.cautions, caution) == result_.cautions.end()) {
            result_.cautions.push_back(caution);
        }
    }

    Library& library_;
    Ends ends_;
    std::string told_in_;
    TakeDown result_;
};

}  // namespace

TakeDown take_down(Library& library, LookId id) {
    return TakeDownGatherer(library, look_state(library, id).look).gather();
}

}  // namespace quarterturn
