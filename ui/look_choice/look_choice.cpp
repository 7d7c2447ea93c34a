#include "ui/look_choice/look_choice.h"

#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_letters = 18;

QVariant number_of(LookId look) {
    return QVariant::fromValue(qlonglong{look.value});
}

}  // namespace

LookChoice::LookChoice(Session& session, QWidget* parent) : QComboBox(parent), session_(session) {
    setAccessibleName(tr("Look"));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(least_letters);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QComboBox::activated, this,
            [this](int index) { emit chosen(LookId{itemData(index).toLongLong()}); });
}

void LookChoice::show_looks(std::optional<LookId> current) {
    clear();
    std::map<ClientId, std::string> names;
    for (const Client& client : session_.library().clients().all()) names[client.id] = client.name;
    for (const Look& look : session_.library().looks().all()) {
        //: a client and one of her looks
        addItem(tr("%1: %2").arg(from_utf8(names[look.client]), from_utf8(look.name)),
                number_of(look.id));
    }
    setCurrentIndex(current ? findData(number_of(*current)) : -1);
}

std::optional<LookId> likely_look(Session& session) {
    Library& library = session.library();
    const auto in_hand = session.look_in_hand();
    if (in_hand && library.looks().find(*in_hand)) return in_hand;
    std::optional<LookId> likely;
    std::optional<LocalTime> newest;
    for (const Look& look : library.looks().all()) {
        if (!likely) likely = look.id;
        for (const SittingId id : look.sittings) {
            const auto sitting = library.sittings().find(id);
            if (!sitting || (newest && sitting->starts <= *newest)) continue;
            if (library.photos().of_sitting(id).empty()) continue;
            likely = look.id;
            newest = sitting->starts;
        }
    }
    session.choose_look(likely);
    return likely;
}

}  // namespace quarterturn
