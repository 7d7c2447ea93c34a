#pragma once

#include <QFrame>

#include "indexer/intake/to_settle.h"

class QComboBox;
class QPushButton;

namespace quarterturn {

class PhotoPicker;
class Session;

// Photos whose time fits no sitting or several: she looks at them and says where they belong.
class UnplacedPart : public QFrame {
    Q_OBJECT
  public:
    UnplacedPart(Session& session, const UnplacedGroup& group, QWidget* parent = nullptr);

  private:
    void fill_choices(const std::vector<Sitting>& sittings);
    void show_count();
    std::vector<PhotoId> meant() const;  // those chosen, else all of them
    void place();

    Session& session_;
    std::vector<PhotoId> all_;
    PhotoPicker* picker_;
    QComboBox* sitting_;
    QPushButton* place_;
};

}  // namespace quarterturn
