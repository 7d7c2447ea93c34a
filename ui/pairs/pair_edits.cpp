#include "ui/pairs/pair_edits.h"

#include <QCoreApplication>

#include "indexer/looks/pairs.h"
#include "indexer/portfolio/inspiration.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string edit_words(const char* text) {
    return to_utf8(QCoreApplication::translate("pair_edits", text));
}

}  // namespace

Edit choose_frames_edit(const Pair& pair, std::optional<PhotoId> first,
                        std::optional<PhotoId> second) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "chose another photo for a pair")),
            [id = pair.id, first, second](Library& library) {
                choose_frames(library, id, first, second);
            }};
}

Edit pin_edit(const Pair& pair, bool pinned) {
    return {pinned ? edit_words(QT_TRANSLATE_NOOP("pair_edits", "pinned a pair"))
                   : edit_words(QT_TRANSLATE_NOOP("pair_edits", "let a pinned pair go")),
            [id = pair.id, pinned](Library& library) { pin(library, id, pinned); }};
}

Edit refuse_edit(const Pair& pair, bool refused) {
    return {refused ? edit_words(QT_TRANSLATE_NOOP("pair_edits", "refused a pair"))
                    : edit_words(QT_TRANSLATE_NOOP("pair_edits", "listed a refused pair again")),
            [id = pair.id, refused](Library& library) { refuse(library, id, refused); }};
}

Edit say_fact(LookId look, Fact fact, const std::vector<std::string>& values) {
    return {
        edit_words(QT_TRANSLATE_NOOP("pair_edits", "changed what a look is found by")),
        [look, fact, values](Library& library) { library.look_facts().say(look, fact, values); }};
}

Edit keep_filter(const KeptPairFilter& filter) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "kept a filter")),
            [filter](Library& library) { library.pair_filters().keep(filter); }};
}

Edit forget_filter(const std::string& name) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "forgot a filter")),
            [name](Library& library) { library.pair_filters().remove(name); }};
}

Edit keep_picture(const Path& picture, ClientId client, LocalTime now) {
    return {edit_words(QT_TRANSLATE_NOOP("pair_edits", "kept a picture with a client")),
            [=](Library& library) { keep_inspiration(library, picture, client, now); }};
}

}  // namespace quarterturn
