#include "ui/running_order/morning_edits.h"

#include "ui/widgets/words.h"

namespace quarterturn {

Edit change_morning(WeddingId wedding, const Morning& after, const QString& said) {
    return {to_utf8(said), [=](Library& library) { library.mornings().save(wedding, after); }};
}

}  // namespace quarterturn
