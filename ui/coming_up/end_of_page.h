#pragma once

#include <QObject>

class QScrollArea;

namespace quarterturn {

// End leads to the end of a page also while the page still grows.
class EndOfPage : public QObject {
    Q_OBJECT
  public:
    explicit EndOfPage(QScrollArea& page);

    void begin_to_grow();
    void end_growing();  // once what it has got is laid out

  private:
    void follow();

    QScrollArea& page_;
    bool grows_ = false;
    bool was_asked_ = false;  // and she has gone nowhere else since
};

}  // namespace quarterturn
