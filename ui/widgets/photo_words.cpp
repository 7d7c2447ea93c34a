#include "ui/widgets/photo_words.h"

#include "ui/widgets/words.h"

namespace quarterturn {

PhotoLook look_of(const Photo& photo) {
    PhotoLook look;
    look.mirrored = photo.tags.mirrored;
    look.used_anyway = !photo.tags.accepted_because.empty();
    for (const Flaw flaw : photo.flaws) look.flaws << shown(flaw);
    return look;
}

QString time_or_name(const Photo& photo) {
    return photo.moment ? clock_shown(*photo.moment) : from_utf8(photo.file.name);
}

}  // namespace quarterturn
