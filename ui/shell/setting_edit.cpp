#include "ui/shell/setting_edit.h"

namespace quarterturn {

Edit change_setting(Library& library, std::string said, std::string_view name, std::string value) {
    const auto before = library.settings().get(name);
    return {std::move(said),
            [=, value = std::move(value)](Library& l) { l.settings().set(name, value); },
            [=](Library& l) {
                if (before) {
                    l.settings().set(name, *before);
                } else {
                    l.settings().clear(name);
                }
            }};
}

}  // namespace quarterturn
