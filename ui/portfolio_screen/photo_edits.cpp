#include "ui/portfolio_screen/photo_edits.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string photo_edit_words(const char* text) {
    return to_utf8(QCoreApplication::translate("photo_edits", text));
}

}  // namespace

Edit say_whose(const std::vector<PhotoId>& photos, const std::optional<Credit>& credit) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "said whose a photo is")),
            [=](Library& library) {
                credit ? library.credits().set(photos, *credit) : library.credits().forget(photos);
            }};
}

Edit say_seen(PhotoId photo, const Seen& seen) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "said who is seen in a photo")),
            [=](Library& library) { library.credits().set_seen(photo, seen); }};
}

Edit keep_selection(const PhotoSelection& selection) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "changed a selection")),
            [=](Library& library) { library.selections().keep(selection); }};
}

Edit rename_selection(const PhotoSelection& selection, const std::string& name) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "named a selection anew")),
            [=](Library& library) {
                library.selections().remove(selection.name);
                library.selections().keep({name, selection.photos});
            }};
}

Edit forget_selection(const PhotoSelection& selection) {
    return {photo_edit_words(QT_TRANSLATE_NOOP("photo_edits", "forgot a selection")),
            [=](Library& library) { library.selections().remove(selection.name); }};
}

}  // namespace quarterturn
