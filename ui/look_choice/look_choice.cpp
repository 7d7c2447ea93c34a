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
    read_names();
    if (current && currentData() == number_of(*current)) return;
    setCurrentIndex(current ? findData(number_of(*current)) : -1);
}

void LookChoice::read_names() {
    const ChangeStamp now = change_stamp(session_.library().database());
    if (!shown_.empty() && now == read_at_) return;
    read_at_ = now;
    std::vector<LookName> names = session_.library().looks().names();
    if (names == shown_) return;
    shown_ = std::move(names);
    fill();
}

void LookChoice::fill() {
    clear();
    std::map<LookId, const LookName*> names;
    for (const LookName& name : shown_) names.emplace(name.look, &name);
    for (const Look& look : session_.library().looks().all()) {
        const auto found = names.find(look.id);
        if (found == names.end()) continue;  // added this instant by another program
        const LookName& name = *found->second;
        //: a client and one of her looks
        addItem(tr("%1: %2").arg(from_utf8(name.client), from_utf8(name.name)), number_of(look.id));
    }
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
