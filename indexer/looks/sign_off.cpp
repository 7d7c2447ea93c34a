#include "indexer/looks/sign_off.h"

#include "indexer/looks/sealed_file.h"
#include "indexer/looks/write_recipe.h"
#include "indexer/rules/sign_off.h"

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

Sentences reasons_in_records(const LookState& state) {
    if (state.sign_off) {
        return {state.look.name + " is signed off already, since " +
                iso_text(date_of(state.sign_off->signed_at)) +
                ": reopen it with a reason before you sign it off again."};
    }
    return reasons_against_sign_off(state.coverage, state.recipe_findings);
}

void save_draft(Library& library, LookId id, LocalTime now) {
    const auto draft = library.recipes().draft(id);
    const auto look = library.looks().find(id);
    if (!draft || !look) return;
    library.history().record("saved the recipe of " + look->name,
                             [&] { save_recipe(library, *look, draft->recipe, now); });
}

// Reading files takes a while; what is signed must still be what was read.
Sentences sign_unless_changed(Library& library, const LookState& read, LocalTime now) {
    Transaction transaction(library.database());
    const Seal seal = seal_of(look_state(library, read.look.id));
    Sentences reasons = changes_since(seal_of(read), seal);
    if (!reasons.empty()) {
        reasons.emplace_back(
            "This happened while it was being signed off: look it over, and sign "
            "it off again.");
        return reasons;
    }
    SignOff signature;
    signature.look = read.look.id;
    signature.signed_at = now;
    signature.seal = seal;
    library.sign_offs().add(signature);
    library.history().stop_at("signed off " + read.look.name);
    transaction.commit();
    return {};
}

}  // namespace

Sentences sign_off(Library& library, LookId look, LocalTime now) {
    Transaction transaction(library.database());
    save_draft(library, look, now);
    const LookState state = look_state(library, look);
    Sentences reasons = reasons_in_records(state);
    if (!reasons.empty()) return reasons;  // and the draft stays one
    transaction.commit();
    reasons = file_problems(library, state);
    if (!reasons.empty()) return reasons;
    return sign_unless_changed(library, state, now);
}

Sentences file_problems(Library& library, const LookState& state) {
    Sentences problems;
    for (const Photo& photo : state.photos) {
        try {
            read_unchanged(library, photo);
        } catch (const StoreError& changed) {
            problems.emplace_back(changed.what());
        } catch (const DiskError& unreadable) {
            problems.emplace_back(unreadable.what());
        }
    }
    return problems;
}

void reopen(Library& library, LookId id, std::string_view because, LocalTime now) {
    Transaction transaction(library.database());
    library.sign_offs().reopen(id, because, now);
    const auto look = library.looks().find(id);
    library.history().stop_at("opened " + (look ? look->name : "a look") + " again");
    transaction.commit();
}

}  // namespace quarterturn
