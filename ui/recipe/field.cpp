#include "ui/recipe/field.h"

namespace quarterturn {

void Field::watch(const Field& inner) {
    connect(&inner, &Field::changed, this, &Field::changed);
    connect(&inner, &Field::took_out, this, &Field::took_out);
}

}  // namespace quarterturn
