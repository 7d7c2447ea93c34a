#include "ui/settings/settings_edits.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {

Edit change_usual_shots(const ShotList& after) {
    return {to_utf8(QCoreApplication::translate("settings", "changed your own shot list")),
            [=](Library& l) { l.looks().set_own_default_shot_list(after); }};
}

}  // namespace quarterturn
