#pragma once

#include <QWidget>
#include <array>
#include <functional>

#include "indexer/looks/running_order.h"

class QCheckBox;
class QComboBox;
class QLayout;
class QPushButton;
class QSpinBox;

namespace quarterturn {

class TimeWords;

// What one client of the party needs: when she must be ready, when she can come, whether she is
// first or last, and her minutes where they are not her recipe's.
class ClientPart : public QWidget {
    Q_OBJECT
  public:
    explicit ClientPart(QWidget* parent = nullptr);

    // `names`: of the whole party, in its order.
    void show_morning(const WeddingMorning& morning, const QStringList& names);
    void choose(ClientId client);

  signals:
    void changed(const quarterturn::Morning& morning, const QString& name);
    void not_understood(const QString& sentence);

  private:
    void build();
    QLayout* build_times();
    QLayout* build_minutes();
    QCheckBox* make_order_box(const QString& words, bool MorningWish::*order);
    TimeWords* make_time(const QString& name, std::optional<int> MorningWish::*time);
    void show_client();
    void show_work(const std::optional<ChairWork>& work);
    void change(const std::function<void(Morning&, MorningWish&)>& how);
    void take_minutes();

    WeddingMorning morning_;
    QComboBox* clients_;
    TimeWords* ready_by_;
    TimeWords* comes_;
    QCheckBox* first_;
    QCheckBox* last_;
    std::array<QSpinBox*, 4> minutes_{};  // before, cooling, may be left, after
    QPushButton* as_recipe_;
};

}  // namespace quarterturn
