#pragma once

#include <QWidget>

#include "indexer/looks/running_order.h"

class QHBoxLayout;
class QVBoxLayout;

namespace quarterturn {

// What is missing to plan the morning, a sentence each that leads to where it belongs, and below it
// a field to give it right here.
class GapsPart : public QWidget {
    Q_OBJECT
  public:
    explicit GapsPart(QWidget* parent = nullptr);

    // Nothing is built anew while the same is missing.
    void show_gaps(const WeddingMorning& morning);

  signals:
    void party_wanted();
    void led_to_look(quarterturn::LookId look);
    void led_to_wedding();
    void minutes_given(quarterturn::ClientId client, int minutes);
    void ready_by_given(quarterturn::ClientId client, int minute);
    void not_understood(const QString& sentence);

  private:
    void add_sentence(const QString& sentence, const MorningGap& gap);
    void add_minutes(const QString& about, const MorningGap& gap);
    void add_ready_by(const QString& about, const MorningGap& gap);
    QHBoxLayout* add_row();

    QVBoxLayout* column_;
    std::vector<std::string> sentences_;
    bool empty_party_ = false;
};

}  // namespace quarterturn
