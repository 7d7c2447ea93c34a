#include "ui/shell/setting_edit.h"

namespace quarterturn {

Edit change_setting(std::string said, std::string_view name, std::string value) {
    return {std::move(said), [name = std::string(name), value = std::move(value)](Library& l) {
                l.settings().set(name, value);
            }};
}

}  // namespace quarterturn
