#include "ui/trial_against_today/agreed_pair_choice.h"

#include <QComboBox>
#include <QListWidget>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/wedding_choice.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QVariant value_of(std::int64_t id) {
    return QVariant::fromValue(qlonglong{id});
}

QString angle_words(const AgreedPair& pair) {
    const QString angle = capitalised_words(shown(pair.angle));
    if (pair.both()) return angle;
    if (pair.agreed) return AgreedPairChoice::tr("%1\nno photo of the day").arg(angle);
    if (pair.made) return AgreedPairChoice::tr("%1\nno photo from the trial").arg(angle);
    return AgreedPairChoice::tr("%1\nno photo").arg(angle);
}

}  // namespace

AgreedPairChoice::AgreedPairChoice(QWidget* parent)
    : QWidget(parent),
      weddings_(new WeddingChoice),
      looks_(new QComboBox),
      angles_(new QListWidget) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    for (QComboBox* choice : {static_cast<QComboBox*>(weddings_), looks_}) {
        choice->setMinimumHeight(morning_target);
    }
    looks_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    angles_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    angles_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    angles_->setSpacing(space(1));
    add(*column, tr("Wedding"), weddings_);
    add(*column, tr("Client and look"), looks_);
    add(*column, tr("Angle"), angles_);
    connect(weddings_, &WeddingChoice::chosen, this, &AgreedPairChoice::wedding_chosen);
    connect(looks_, &QComboBox::activated, this,
            [this](int index) { emit look_chosen(LookId{looks_->itemData(index).toLongLong()}); });
    connect(angles_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0) emit angle_chosen(row);
    });
}

void AgreedPairChoice::add(QVBoxLayout& column, const QString& name, QWidget* choice) {
    choice->setAccessibleName(name);
    column.addWidget(make_quiet(name));
    column.addWidget(choice);
}

void AgreedPairChoice::show_weddings(const std::vector<Wedding>& weddings,
                                     std::optional<WeddingId> chosen) {
    weddings_->show_weddings(weddings, chosen);
}

std::optional<LookId> AgreedPairChoice::show_looks(const WeddingAsMade& made,
                                                   std::optional<LookId> wished) {
    looks_->clear();
    for (const ClientAsMade& client : made.clients) {
        for (const LookAsMade& look : client.looks) {
            //: a client and her look
            looks_->addItem(tr("%1: %2").arg(isolated(from_utf8(client.client.name)),
                                             isolated(from_utf8(look.look.name))),
                            value_of(look.look.id.value));
        }
    }
    if (looks_->count() == 0) return std::nullopt;
    const int there = wished ? looks_->findData(value_of(wished->value)) : -1;
    looks_->setCurrentIndex(std::max(there, 0));
    return LookId{looks_->currentData().toLongLong()};
}

std::optional<Angle> AgreedPairChoice::show_angles(const std::vector<AgreedPair>& pairs,
                                                   std::optional<Angle> wished) {
    const QSignalBlocker quiet(angles_);
    angles_->clear();
    for (const AgreedPair& pair : pairs) {
        auto* row = new QListWidgetItem(angle_words(pair), angles_);
        const int lines = row->text().count(QLatin1Char('\n')) + 1;
        const int words = lines * angles_->fontMetrics().lineSpacing() + space(2);
        row->setSizeHint({0, std::max(morning_target, words)});
    }
    int height = 2 * angles_->frameWidth();
    for (int row = 0; row < angles_->count(); ++row) {
        height += angles_->sizeHintForRow(row) + 2 * angles_->spacing();
    }
    angles_->setFixedHeight(std::max(height, space(10)));
    if (pairs.empty()) return std::nullopt;
    auto chosen = wished ? std::ranges::find(pairs, *wished, &AgreedPair::angle)
                         : std::ranges::find_if(pairs, &AgreedPair::both);
    if (chosen == pairs.end()) chosen = pairs.begin();
    angles_->setCurrentRow(static_cast<int>(chosen - pairs.begin()));
    return chosen->angle;
}

}  // namespace quarterturn
