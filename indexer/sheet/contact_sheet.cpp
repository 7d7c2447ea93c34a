#include "indexer/sheet/contact_sheet.h"

#include "indexer/sheet/contact_content.h"
#include "indexer/sheet/heads.h"
#include "indexer/sheet/lay_out.h"
#include "indexer/sheet/sheet_for_others.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

SittingState sitting_state(Library& library, SittingId id) {
    SittingState state;
    const auto sitting = library.sittings().find(id);
    if (!sitting)
        throw StoreError("There is no such sitting. List the sittings to find its number.");
    state.sitting = *sitting;
    state.client = library.clients().find(sitting->client).value_or(Client{});
    if (sitting->wedding) state.wedding = library.weddings().find(*sitting->wedding);
    state.photos = library.photos().of_sitting(id);
    return state;
}

// Hers, and those of all who are of the party.
std::vector<std::string> names_around(Library& library, const LookState& state) {
    std::vector<std::string> names{state.client.name};
    if (!state.wedding) return names;
    for (const PartyMember& member : state.wedding->party) {
        const auto client = library.clients().find(member.client);
        if (client) names.push_back(client->name);
    }
    return names;
}

SheetContent look_content(Library& library, const LookState& state, const SheetWishes& wishes) {
    SheetContent content = contact_content(state, wishes, library.folder());
    if (wishes.whom == SheetFor::own_work) return content;
    const auto names = names_around(library, state);
    std::optional<SheetRecipe> recipe;
    if (state.recipe) recipe = recipe_for_others(state.recipe->recipe, names);
    return content_for_others(std::move(content), title_for_others(state.look, names),
                              std::move(recipe));
}

}  // namespace

Document contact_sheet(Library& library, Decoder& decoder, TextRuler& ruler, LookId look,
                       const SheetWishes& wishes) {
    SheetContent content = look_content(library, look_state(library, look), wishes);
    content.business_line = business_words(library.settings());
    const SheetStyle style = sheet_style(wishes.paper);
    find_heads(content, style, library, decoder);
    return lay_out(content, style, ruler);
}

std::vector<PhotoItem> frames_of_sitting(Library& library, SittingId sitting, Paper paper) {
    const SheetContent content = sitting_content(sitting_state(library, sitting), library.folder());
    return frames_of(content, sheet_style(paper));
}

Document sitting_sheet(Library& library, TextRuler& ruler, SittingId sitting, Paper paper,
                       SheetFor whom) {
    const SittingState state = sitting_state(library, sitting);
    SheetContent content = sitting_content(state, library.folder());
    if (whom == SheetFor::others) {
        const std::string kind = capitalised(word(state.sitting.kind));
        content = content_for_others(std::move(content), kind, std::nullopt);
    }
    content.business_line = business_words(library.settings());
    return lay_out(content, sheet_style(paper), ruler);
}

}  // namespace quarterturn
