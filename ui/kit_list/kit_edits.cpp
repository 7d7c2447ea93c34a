#include "ui/kit_list/kit_edits.h"

#include <QCoreApplication>

#include "ui/shell/setting_edit.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString kit_words(const char* text) {
    return QCoreApplication::translate("kit_edits", text);
}

void set_tick(Library& library, WeddingId wedding, const KitLine& line, bool packed) {
    if (packed) {
        library.kit_ticks().set(wedding, line.item, line.count);
    } else {
        library.kit_ticks().clear(wedding, line.item);
    }
}

}  // namespace

Edit change_tick(WeddingId wedding, const KitLine& line, bool packed) {
    const QString said = packed ? kit_words(QT_TRANSLATE_NOOP("kit_edits", "ticked %1 as packed"))
                                : kit_words(QT_TRANSLATE_NOOP("kit_edits", "took the tick off %1"));
    return {to_utf8(said.arg(from_utf8(line.what))),
            [=](Library& library) { set_tick(library, wedding, line, packed); }};
}

Edit change_spare(int percent) {
    return change_setting(
        to_utf8(kit_words(QT_TRANSLATE_NOOP("kit_edits", "changed the pins to spare"))),
        spare_setting, std::to_string(percent));
}

}  // namespace quarterturn
