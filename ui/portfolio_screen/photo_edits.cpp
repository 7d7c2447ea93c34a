#include "ui/portfolio_screen/photo_edits.h"

#include <QCoreApplication>
#include <array>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string photo_edit_words(const char* text) {
    return to_utf8(QCoreApplication::translate("photo_edits", text));
}

void set_credit(Library& library, PhotoId photo, const std::optional<Credit>& credit) {
    const std::array one{photo};
    if (credit) {
        library.credits().set(one, *credit);
    } else {
        library.credits().forget(one);
    }
}

std::function<void(Library&)> selection_as_kept(const std::string& name,
                                                const std::optional<PhotoSelection>& kept) {
    return [name, kept](Library& library) {
        if (kept) {
            library.selections().keep(*kept);
        } else {
            library.selections().remove(name);
        }
    };
}

// The one name in place of the other, in one step.
std::function<void(Library&)> in_place_of(const std::string& old, const PhotoSelection& kept) {
    return [old, kept](Library& library) {
        Transaction both(library.database());
        library.selections().remove(old);
        library.selections().keep(kept);
        both.commit();
    };
}

}  // namespace

Edit say_whose(Library& library, const std::vector<PhotoId>& photos,
               const std::optional<Credit>& credit) {
    std::map<PhotoId, std::optional<Credit>> before;
    for (const PhotoId photo : photos) before[photo] = library.credits().of(photo);
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "said whose a photo is")),
            [=](Library& records) {
                Transaction all(records.database());
                for (const PhotoId photo : photos) set_credit(records, photo, credit);
                all.commit();
            },
            [=](Library& records) {
                Transaction all(records.database());
                for (const auto& [photo, said] : before) set_credit(records, photo, said);
                all.commit();
            }};
}

Edit say_seen(Library& library, PhotoId photo, const Seen& seen) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "said who is seen in a photo")),
            [=](Library& records) { records.credits().set_seen(photo, seen); },
            [=, before = library.credits().seen(photo)](Library& records) {
                records.credits().set_seen(photo, before);
            }};
}

Edit keep_selection(Library& library, const PhotoSelection& selection) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "changed a selection")),
            selection_as_kept(selection.name, selection),
            selection_as_kept(selection.name, library.selections().find(selection.name))};
}

Edit rename_selection(const PhotoSelection& selection, const std::string& name) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "named a selection anew")),
            in_place_of(selection.name, {name, selection.photos}), in_place_of(name, selection)};
}

Edit forget_selection(const PhotoSelection& selection) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "forgot a selection")),
            selection_as_kept(selection.name, std::nullopt),
            selection_as_kept(selection.name, selection)};
}

}  // namespace quarterturn
