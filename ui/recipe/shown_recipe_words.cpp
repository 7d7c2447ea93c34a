#include "ui/recipe/shown_recipe_words.h"

#include <QCoreApplication>

namespace quarterturn {
namespace {

// Marked here for translation, looked up by in_her_language() below.
[[maybe_unused]] constexpr std::array marked_words{QT_TRANSLATE_NOOP("words", "away from the face"),
                                                   QT_TRANSLATE_NOOP("words", "towards the face"),
                                                   QT_TRANSLATE_NOOP("words", "alternating"),
                                                   QT_TRANSLATE_NOOP("words", "left"),
                                                   QT_TRANSLATE_NOOP("words", "middle"),
                                                   QT_TRANSLATE_NOOP("words", "right"),
                                                   QT_TRANSLATE_NOOP("words", "none"),
                                                   QT_TRANSLATE_NOOP("words", "padding"),
                                                   QT_TRANSLATE_NOOP("words", "band"),
                                                   QT_TRANSLATE_NOOP("words", "extension"),
                                                   QT_TRANSLATE_NOOP("words", "accessory"),
                                                   QT_TRANSLATE_NOOP("words", "light"),
                                                   QT_TRANSLATE_NOOP("words", "regular"),
                                                   QT_TRANSLATE_NOOP("words", "strong"),
                                                   QT_TRANSLATE_NOOP("words", "mirror"),
                                                   QT_TRANSLATE_NOOP("words", "photos"),
                                                   QT_TRANSLATE_NOOP("words", "mirror and photos")};

template <class Value>
QString in_her_language(Value value) {
    return QCoreApplication::translate("words", std::string(word(value)).c_str());
}

}  // namespace

QString shown(Wind wind) {
    return in_her_language(wind);
}
QString shown(PartingSide side) {
    return in_her_language(side);
}
QString shown(PieceKind kind) {
    return in_her_language(kind);
}
QString shown(Hold hold) {
    return in_her_language(hold);
}
QString shown(SeenIn seen) {
    return in_her_language(seen);
}

}  // namespace quarterturn
