#include "ui/pairs/pair_edits.h"

#include <QCoreApplication>
#include <algorithm>
#include <memory>

#include "indexer/looks/pairs.h"
#include "indexer/portfolio/inspiration.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string edit_words(const char* text) {
    return to_utf8(QCoreApplication::translate("pair_edits", text));
}

// As she said before, in one step with the pairs that come of it.
std::function<void(Library&)> choice_of(const Pair& pair) {
    return [id = pair.id, choice = pair.choice](Library& library) {
        Transaction transaction(library.database());
        library.pairs().choose(id, choice);
        bring_pairs_up_to_date(library);
        transaction.commit();
    };
}

std::function<void(Library&)> filter_as_kept(const std::string& name,
                                             const std::optional<PairFilter>& filter) {
    return [name, filter](Library& library) {
        if (filter) {
            library.pair_filters().keep({name, *filter});
        } else {
            library.pair_filters().remove(name);
        }
    };
}

}  // namespace

Edit choose_frames_edit(const Pair& pair, std::optional<PhotoId> first,
                        std::optional<PhotoId> second) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "chose another photo for a pair")),
            [id = pair.id, first, second](Library& library) {
                choose_frames(library, id, first, second);
            },
            choice_of(pair)};
}

Edit pin_edit(const Pair& pair, bool pinned) {
    return {pinned ? edit_words(QT_TRANSLATE_NOOP("pair_edits", "pinned a pair"))
                   : edit_words(QT_TRANSLATE_NOOP("pair_edits", "let a pinned pair go")),
            [id = pair.id, pinned](Library& library) { pin(library, id, pinned); },
            choice_of(pair)};
}

Edit refuse_edit(const Pair& pair, bool refused) {
    return {refused ? edit_words(QT_TRANSLATE_NOOP("pair_edits", "refused a pair"))
                    : edit_words(QT_TRANSLATE_NOOP("pair_edits", "listed a refused pair again")),
            [id = pair.id, refused](Library& library) { refuse(library, id, refused); },
            choice_of(pair)};
}

Edit say_fact(Library& library, LookId look, Fact fact, const std::vector<std::string>& values) {
    std::vector<std::string> before;
    for (const LookFact& each : library.look_facts().of(look)) {
        if (each.fact == fact && each.said) before.push_back(each.value);
    }
    return {
        edit_words(QT_TRANSLATE_NOOP("pair_edits", "changed what a look is found by")),
        [look, fact, values](Library& records) { records.look_facts().say(look, fact, values); },
        [look, fact, before](Library& records) { records.look_facts().say(look, fact, before); }};
}

Edit keep_filter(Library& library, const KeptPairFilter& filter) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "kept a filter")),
            filter_as_kept(filter.name, filter.filter),
            filter_as_kept(filter.name, library.pair_filters().find(filter.name))};
}

Edit forget_filter(Library& library, const std::string& name) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "forgot a filter")),
            filter_as_kept(name, std::nullopt),
            filter_as_kept(name, library.pair_filters().find(name))};
}

Edit keep_picture(const Path& picture, ClientId client, LocalTime now) {
    const auto added = std::make_shared<std::optional<InspirationId>>();
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "kept a picture with a client")),
            [=](Library& library) {
                const auto before = library.inspirations().of_client(client);
                const Inspiration kept = keep_inspiration(library, picture, client, now);
                const bool is_new = std::ranges::find(before, kept) == before.end();
                *added = is_new ? std::optional(kept.id) : std::nullopt;
            },
            [=](Library& library) {
                if (*added) remove_inspiration(library, **added);
            }};
}

}  // namespace quarterturn
